using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;

namespace ConeService.Firing.Cones;

/// <summary>Answers: which cone does a steady ramp to this temperature put down?</summary>
/// <param name="charts">The charts.</param>
internal sealed class ConeReader(ConeCharts charts)
{
    /// <summary>The rate whose degrees margins are expressed in, °C/h (docs/cone-curves.md).</summary>
    public const double MarginRate = 60;

    /// <summary>The cone reached.</summary>
    /// <param name="temperature">Where the ramp ends; no hold, instant cooling.</param>
    /// <param name="question">Chart and rate.</param>
    /// <param name="temperatureField">Name of the temperature parameter, for findings.</param>
    /// <exception cref="RefusedException">The temperature lies outside the chart at this rate.</exception>
    public ConeReading Answer(Temperature temperature, ConeQuestion question, string temperatureField = "temperature")
    {
        var (chart, rate) = (question.Chart, question.Rate);
        var judged = chart.Cones.Select(c => (Cone: c, Value: c.At(rate))).Where(x => x.Value is not null).Select(x => (x.Cone, Value: x.Value!)).ToList();
        if (judged.Count == 0) throw new RefusedException(NothingToJudge(chart, rate));
        var (celsius, note) = AsPrinted(temperature, rate, judged);
        var down = judged.TakeWhile(x => x.Value.Celsius <= celsius).Count();
        if (down == 0 || judged.Max(x => x.Value.Celsius) < celsius) throw new RefusedException(OutsideScale(temperature, celsius, chart, rate, judged, temperatureField));

        var reached = judged[down - 1];
        var next = down < judged.Count ? judged[down] : default;
        var margin = Margin(reached, celsius, rate);
        double? nextMargin = next.Cone is null ? null : Margin(next, celsius, rate);
        double? fraction = nextMargin is { } short_ ? margin / (margin - short_) : null;
        IReadOnlyList<EndPointValue> used = next.Cone is null ? [reached.Value] : [reached.Value, next.Value];
        return new(
            charts.Dataset.VersionId,
            Math.Round(temperature.Celsius, 4),
            Math.Round(temperature.Fahrenheit, 4),
            rate?.CelsiusPerHour,
            chart.Id,
            reached.Cone.Cone.ToString(),
            next.Cone?.Cone.ToString(),
            fraction is { } f ? Math.Round(f, 4) : null,
            Math.Round(margin, 4),
            Math.Round(margin * 1.8, 4),
            nextMargin is { } n ? Math.Round(n, 4) : null,
            Say(reached.Cone.Cone, next.Cone?.Cone, fraction),
            [.. judged.Skip(down).Where(x => x.Value.Celsius <= celsius).Select(x => x.Cone.Cone.ToString())],
            [.. chart.Cones.Select(c => c.Cone).Except(judged.Select(x => x.Cone.Cone)).Select(c => c.ToString())],
            used.Max(v => v.Basis),
            [.. used.SelectMany(v => v.From).Select(PrintedPoint.Of)],
            Notes(note, chart, rate, reached, next),
            EndPointCalculator.SourcesOf(used),
            question.Assumed);
    }

    /// <summary>“6 and 0.47 of the way to 7”; never 6.47, which is no cone.</summary>
    internal static string Say(Cone reached, Cone? next, double? fraction) => next is null || fraction is not { } f
        ? $"{reached}, the last cone of the chart"
        : string.Create(CultureInfo.InvariantCulture, $"{reached} and {Math.Floor(Math.Max(0, f) * 100) / 100:0.00} of the way to {next}");

    // A chart's °F are its °C rounded: 1945 °F is printed for 1063 °C, though it converts to 1062.8.
    private static (decimal Celsius, string? Note) AsPrinted(Temperature temperature, HeatingRate? rate, List<(ChartCone Cone, EndPointValue Value)> judged)
    {
        if (temperature.GivenFahrenheit is not { } given) return (temperature.Celsius, null);
        var cell = judged.Select(x => x.Cone.CellAt(rate)).FirstOrDefault(c => c?.Fahrenheit == given);
        return cell is null || cell.Celsius == temperature.Celsius
            ? (temperature.Celsius, null)
            : (cell.Celsius, $"{given} °F is what the chart prints for cone {cell.Cone}: it was read as the printed {cell.Celsius} °C, of which it is the rounded form.");
    }

    private static Finding NothingToJudge(ConeChart chart, HeatingRate? rate) => new(
        "rate-not-computable", "rate", rate?.ToString(), $"Chart {chart.Id} gives no way to compute any of its cones at {rate}.",
        [.. chart.Rates.Select(r => $"{r}C/h")], "Ask for a printed rate.");

    private static double Margin((ChartCone Cone, EndPointValue Value) cone, decimal celsius, HeatingRate? rate)
    {
        // Without a rate, or where the chart has one rate and nothing to borrow, plain degrees are all there is.
        if (rate is not { } r || cone.Cone.Curve(r) is not { } curve) return (double)(celsius - cone.Value.Celsius);
        var progress = curve.LogK(Temperature.FromCelsius(celsius).Kelvin) - Math.Log((double)r.CelsiusPerHour);
        return curve.Inverse(Math.Log(MarginRate) + progress) - curve.EndPoint(MarginRate);
    }

    private static List<string> Notes(string? note, ConeChart chart, HeatingRate? rate, (ChartCone Cone, EndPointValue Value) reached, (ChartCone Cone, EndPointValue Value) next)
    {
        List<string> notes = note is null ? [] : [note];
        notes.AddRange(EndPointNotes.For(chart, reached.Cone, rate, reached.Value));
        if (next.Cone is not null) notes.AddRange(EndPointNotes.For(chart, next.Cone, rate, next.Value));
        notes.Add("Cones record work: a hold or a slow end reaches a hotter cone at the same temperature. Let a witness cone decide.");
        return [.. notes.Distinct()];
    }

    private static Finding OutsideScale(
        Temperature temperature, decimal celsius, ConeChart chart, HeatingRate? rate, List<(ChartCone Cone, EndPointValue Value)> judged, string field)
    {
        var (low, high) = (judged[0], judged.MaxBy(x => x.Value.Celsius));
        var asked = string.Create(CultureInfo.InvariantCulture, $"{temperature.Celsius:0.##}C");
        // The likeliest slip is the other scale's letter; name it when it would give an answer.
        var otherWay = temperature.GivenFahrenheit is null ? Temperature.FromFahrenheit(celsius).Celsius : temperature.GivenFahrenheit.Value;
        var swap = otherWay >= low.Value.Celsius && otherWay <= high.Value.Celsius
            ? temperature.GivenFahrenheit is { } f
                ? $"{f} looks like °C: {f}C."
                : string.Create(CultureInfo.InvariantCulture, $"{celsius:0.##} looks like °F: {celsius:0.##}F is {otherWay:0} °C.")
            : celsius < low.Value.Celsius ? $"No cone of the chart is down yet: the first is {low.Cone.Cone}." : $"Every cone of the chart is down: the last is {high.Cone.Cone}.";
        var at = rate is null ? "" : $" at {rate}";
        return new(
            "temperature-outside-scale", field, asked,
            $"{asked} lies outside chart {chart.Id}{at}.",
            [string.Create(CultureInfo.InvariantCulture, $"{low.Value.Celsius:0.####}C (cone {low.Cone.Cone}) to {high.Value.Celsius:0.####}C (cone {high.Cone.Cone}){at}")],
            swap);
    }
}
