using ConeService.Contract.Cones;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>Describes a cone with every printed end point of every chart.</summary>
/// <param name="charts">The charts.</param>
internal sealed class ConeDescriber(ConeCharts charts)
{
    // No kiln of a pottery reaches further: nobody takes 18 for 018.
    private const int HighestOfPotters = 14;

    // How many cones apart two may lie: as neighbours, whose ware hardly differs; and as near ones, where ware suffers but stands.
    private const int MostOfNeighbours = 2;
    private const int MostOfNear = 5;

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
            [.. cells.Select(PrintedCells.EndPoint)],
            ChartDifferences.Explain(cone, cells),
            row.Note,
            row.Confidence,
            [.. row.Sources.Concat(cells.Select(c => c.Source)).Distinct()]);
    }

    private ConeMixUp? MixUp(Cone cone)
    {
        var other = cone.MixUp;
        if (!charts.Scale.Contains(other) || Math.Abs(cone.Position) > HighestOfPotters) return null;
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
        return new(other.ToString(), apart, apart * 9m / 5m, pair.A.Chart, pair.A.RateCelsiusPerHour, WrongOne(cone, other, apart));
    }

    private static Message WrongOne(Cone cone, Cone other, decimal apart)
    {
        var (low, high) = cone < other ? (cone, other) : (other, cone);
        (string Name, object? Value)[] values =
        [
            ("other", other.ToString()),
            ("celsius", Math.Abs(apart)),
            ("fahrenheit", Math.Round(Math.Abs(apart) * 9m / 5m)),
            ("direction", apart > 0 ? "hotter" : "cooler"),
            ("cone", cone.ToString()),
            ("low", low.ToString()),
            ("high", high.ToString()),
        ];
        // There is no cone 0: from 01 to 1 is one step, from 02 to 2 are three.
        return ((2 * Math.Abs(cone.Position)) - 1) switch
        {
            <= MostOfNeighbours => Message.Of("cones.mix-up-neighbour", values),
            <= MostOfNear => Message.Of("cones.mix-up-near", values),
            _ => Message.Of("cones.mix-up", values),
        };
    }
}
