using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>Describes a cone with every printed end point of every chart.</summary>
/// <param name="charts">The charts.</param>
internal sealed class ConeDescriber(ConeCharts charts)
{
    /// <summary>Describes a cone of the scale.</summary>
    public ConeDescription Describe(Cone cone)
    {
        var row = charts.Scale.Row(cone);
        var cells = charts.Charts.Select(c => c.Find(cone)).OfType<ChartCone>().SelectMany(c => c.Cells).ToList();
        return new(
            charts.Dataset.VersionId,
            cone.ToString(),
            row.Kind,
            row.WholeStep,
            charts.Scale.Previous(cone)?.ToString(),
            charts.Scale.Next(cone)?.ToString(),
            MixUp(cone),
            [.. cells.Select(Printed)],
            ChartDifferences.Explain(cone, cells),
            row.Note,
            row.Confidence,
            [.. row.Sources.Concat(cells.Select(c => c.Source)).Distinct()]);
    }

    /// <summary>One cell as the API shows it.</summary>
    internal static PrintedEndPoint Printed(EndPointRow cell) => new(
        cell.Chart,
        cell.RateCelsiusPerHour,
        cell.Celsius,
        cell.Fahrenheit ?? Temperature.ToFahrenheit(cell.Celsius),
        cell.Fahrenheit is null ? FahrenheitBasis.Converted : FahrenheitBasis.Printed,
        Basis.Printed,
        cell.Confidence,
        cell.Source,
        cell.Note);

    private ConeMixUp? MixUp(Cone cone)
    {
        var other = cone.MixUp;
        if (!charts.Scale.Contains(other)) return null;
        // The chart that answers by default first, at its usual rate; else the first that prints both at one rate.
        var pairs =
            from chart in charts.Charts.OrderByDescending(c => c.Id == ConeCharts.DefaultChart)
            from a in chart.Find(cone)?.Cells ?? []
            from b in chart.Find(other)?.Cells ?? []
            where a.RateCelsiusPerHour == b.RateCelsiusPerHour
            orderby chart.Id == ConeCharts.DefaultChart descending, a.RateCelsiusPerHour == chart.DefaultRate?.CelsiusPerHour descending
            select (a, b);
        if (pairs.Select(p => ((EndPointRow A, EndPointRow B)?)p).FirstOrDefault() is not { } pair) return null;
        var apart = pair.B.Celsius - pair.A.Celsius;
        var (low, high) = cone < other ? (cone, other) : (other, cone);
        return new(
            other.ToString(),
            apart,
            apart * 9m / 5m,
            pair.A.Chart,
            pair.A.RateCelsiusPerHour,
            $"Cone {other} is {Math.Abs(apart)} °C ({Math.Round(Math.Abs(apart) * 9m / 5m)} °F) {(apart > 0 ? "hotter" : "cooler")} than cone {cone}. Ware for cone {low} fired to cone {high} can slump, bubble or melt onto the shelf; a glaze for cone {high} stays unmelted at cone {low}.");
    }
}
