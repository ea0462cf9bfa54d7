using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>Answers: at which temperature is this cone down?</summary>
/// <param name="charts">The charts.</param>
internal sealed class EndPointCalculator(ConeCharts charts)
{
    /// <summary>The end point of a cone.</summary>
    /// <param name="cone">A cone of the scale.</param>
    /// <param name="question">Chart and rate.</param>
    /// <param name="coneField">Name of the cone parameter, for findings.</param>
    /// <param name="rateField">Name of the rate parameter, for findings.</param>
    /// <exception cref="RefusedException">The chart does not print the cone, or gives no way to tell its end point at this rate.</exception>
    public EndPoint Answer(Cone cone, ConeQuestion question, string coneField = "cone", string rateField = "rate")
    {
        var chart = question.Chart;
        var assumed = question.Assumed.ToList();
        var found = OnChart(chart, cone, coneField, assumed);
        var rate = question.Rate;
        if (!found.HasRates)
        {
            if (assumed.RemoveAll(a => a.Parameter == "rate") == 0 && rate is not null) throw new RefusedException(ConeQuestion.NotApplicable(chart, rate.ToString(), rateField));
            rate = null;
        }

        var value = found.At(rate) ?? throw new RefusedException(NoKinetics(found, rate!.Value, chart, rateField));
        var printed = value.Basis == Basis.Printed ? value.From[0] : null;
        return new(
            charts.Dataset.VersionId,
            found.Cone.ToString(),
            chart.Id,
            rate?.CelsiusPerHour,
            value.Celsius,
            printed?.Fahrenheit ?? Temperature.ToFahrenheit(value.Celsius),
            printed?.Fahrenheit is null ? FahrenheitBasis.Converted : FahrenheitBasis.Printed,
            value.SigmaCelsius is { } sigma ? Math.Round(sigma, 2) : null,
            value.Basis,
            printed?.Confidence ?? Confidence.Derived,
            [.. value.From.Select(PrintedPoint.Of)],
            Elsewhere(found, rate, value.Celsius),
            EndPointNotes.For(chart, found, rate, value),
            SourcesOf(value),
            assumed);
    }

    /// <summary>Ids of the sources behind a value; a computed one also rests on the derived bending energies.</summary>
    internal static string[] SourcesOf(params IEnumerable<EndPointValue> values) =>
        [.. values.SelectMany(v => v.From).Select(c => c.Source).Concat(values.Any(v => v.Basis != Basis.Printed) ? ["derived"] : Array.Empty<string>()).Distinct()];

    private static ChartCone OnChart(ConeChart chart, Cone cone, string field, List<Assumption> assumed)
    {
        if (chart.Find(cone) is { } exact) return exact;
        var twin = cone.WithLetter(!cone.HasLetter);
        if (chart.Find(twin) is { } other)
        {
            assumed.Add(new("cone", twin.ToString(), $"Chart {chart.Id} prints {cone} as {twin}."));
            return other;
        }

        var near = chart.Cones.OrderBy(c => Math.Abs(c.Cone.Position - cone.Position)).Take(2).Select(c => c.Cone).Order();
        throw new RefusedException(new Finding(
            "cone-not-on-chart", field, cone.ToString(), $"Chart {chart.Id} does not print cone {cone}.",
            [.. near.Select(c => c.ToString())],
            chart.Find(cone.MixUp) is null ? null : $"It prints cone {cone.MixUp}, which is another cone."));
    }

    private static Finding NoKinetics(ChartCone cone, HeatingRate rate, ConeChart chart, string field) => new(
        "rate-not-computable", field, rate.ToString(),
        $"Chart {chart.Id} has no kinetics for cone {cone.Cone}, and the self-supporting chart does not print it: nothing can be computed at {rate}.",
        [.. cone.Cells.Select(c => $"{c.RateCelsiusPerHour}C/h")],
        "Ask for the printed rate.");

    private List<PrintedPoint> Elsewhere(ChartCone cone, HeatingRate? rate, decimal celsius) =>
        [.. charts.Charts
            .Select(c => c.Find(cone.Cone))
            .OfType<ChartCone>()
            .SelectMany(c => c.Cells)
            .Where(cell => !cone.Cells.Any(own => ReferenceEquals(own, cell) && own.RateCelsiusPerHour == rate?.CelsiusPerHour))
            .Where(cell => (rate is not null && cell.RateCelsiusPerHour == rate?.CelsiusPerHour) || cell.Celsius == celsius)
            .Select(PrintedPoint.Of)];
}
