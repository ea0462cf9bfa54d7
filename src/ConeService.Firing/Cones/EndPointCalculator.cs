using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

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
    /// <exception cref="RefusedException">The chart does not print the cone, or gives no way to tell its end point at this
    /// rate.</exception>
    public EndPoint Answer(Cone cone, ConeQuestion question, string coneField = "cone", string rateField = "rate")
    {
        var chart = question.Chart;
        var assumed = question.Assumed.ToList();
        var found = OnChart(chart, cone, coneField, assumed);
        var rate = question.Rate;
        if (!found.HasRates)
        {
            var rateWasAssumed = assumed.RemoveAll(a => a.Field == "rate") > 0;
            if (!rateWasAssumed && rate is not null)
            {
                throw new RefusedException(ConeQuestion.NotApplicable(chart, rate.ToString(), rateField));
            }

            rate = null;
        }

        var value = found.At(rate) ?? throw new RefusedException(NoKinetics(found, rate!.Value, chart, rateField));
        var printed = value.Basis == Basis.Printed ? value.From[0] : null;
        return new(
            charts.Dataset.VersionId,
            Cone: found.Cone.ToString(),
            Chart: chart.Id,
            RateCelsiusPerHour: rate?.CelsiusPerHour,
            Celsius: value.Celsius,
            Fahrenheit: printed?.Fahrenheit ?? Temperature.ToFahrenheit(value.Celsius),
            FahrenheitBasis: printed is null ? FahrenheitBasis.Converted : PrintedCells.BasisOf(printed),
            SigmaCelsiusDifference: value.SigmaCelsius is { } sigma ? Math.Round(sigma, 2) : null,
            Basis: value.Basis,
            Confidence: value.Confidence,
            ComputedFrom: [.. value.Cells.Select(PrintedCells.Point)],
            BorrowedFrom: charts.BorrowedBy(value),
            SameConeElsewhere: Elsewhere(found, rate, value.Celsius),
            Notes: EndPointNotes.For(chart, found, rate, value),
            Sources: SourcesOf(value),
            Assumed: assumed);
    }

    /// <summary>Ids of the sources behind a value; a computed one also rests on the derived bending energies.</summary>
    internal static string[] SourcesOf(params IEnumerable<EndPointValue> values)
    {
        var computed = values.Any(v => v.Basis != Basis.Printed);
        return [.. values.SelectMany(v => v.Cells).Select(c => c.Source)
            .Concat(computed ? [ConeCharts.DerivedSource] : Array.Empty<string>()).Distinct()];
    }

    private static ChartCone OnChart(ConeChart chart, Cone cone, string field, List<Assumption> assumed)
    {
        if (chart.Find(cone) is { } exact) return exact;
        var twin = cone.WithLetter(!cone.HasLetter);
        if (chart.Find(twin) is { } other)
        {
            assumed.Add(new("cone", twin.ToString(), Message.Of(
                "cones.printed-as", ("chart", chart.Id), ("cone", cone.ToString()), ("twin", twin.ToString()))));
            return other;
        }

        var near = chart.Cones.OrderBy(c => Math.Abs(c.Cone.Position - cone.Position)).Take(2).Select(c => c.Cone).Order();
        throw new RefusedException(new Finding(
            FindingCodes.ConeNotOnChart, field, cone.ToString(), NotOnChart(chart, cone),
            Message.Verbatim(near.Select(c => c.ToString())),
            chart.Find(cone.MixUp) is null ? null : Message.Of("cones.twin-on-chart", ("cone", cone.MixUp.ToString()))));
    }

    /// <summary>“Chart … does not print cone …”.</summary>
    internal static Message NotOnChart(ConeChart chart, Cone cone) =>
        Message.Of("cones.not-on-chart", ("chart", chart.Id), ("cone", cone.ToString()));

    private static Finding NoKinetics(ChartCone cone, HeatingRate rate, ConeChart chart, string field) => new(
        FindingCodes.RateNotComputable, field, rate.ToString(),
        Message.Of("cones.no-kinetics", ("chart", chart.Id), ("cone", cone.Cone.ToString()), ("rate", rate.ToString())),
        Message.Verbatim(cone.Cells.Select(c => $"{c.RateCelsiusPerHour}C/h")),
        Message.Of("cones.ask-for-the-printed-rate"));

    private List<PrintedPoint> Elsewhere(ChartCone cone, HeatingRate? rate, decimal celsius) =>
        [.. charts.Charts
            .Select(c => c.Find(cone.Cone))
            .OfType<ChartCone>()
            .SelectMany(c => c.Cells)
            .Where(cell => !cone.Cells.Any(own => ReferenceEquals(own, cell) && own.RateCelsiusPerHour == rate?.CelsiusPerHour))
            .Where(cell => (rate is not null && cell.RateCelsiusPerHour == rate?.CelsiusPerHour) || cell.Celsius == celsius)
            .Select(PrintedCells.Point)];
}
