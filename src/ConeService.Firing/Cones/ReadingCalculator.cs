using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Cones;

/// <summary>Answers: which cone does a steady ramp to this temperature put down?</summary>
/// <param name="charts">The charts.</param>
internal sealed class ReadingCalculator(ConeCharts charts)
{
    /// <summary>The cone reached.</summary>
    /// <param name="temperature">Where the ramp ends; no hold, instant cooling.</param>
    /// <param name="question">Chart and rate.</param>
    /// <param name="temperatureField">Name of the temperature parameter, for findings.</param>
    /// <exception cref="RefusedException">The temperature lies outside the chart at this rate.</exception>
    public ConeReading Answer(Temperature temperature, ConeQuestion question, string temperatureField = "temperature")
    {
        var (chart, rate) = (question.Chart, question.Rate);
        List<JudgedCone> judged =
            [.. chart.Cones.Select(c => (Cone: c, Value: c.At(rate))).Where(x => x.Value is not null)
                .Select(x => new JudgedCone(x.Cone, x.Value!))];
        if (judged.Count == 0) throw new RefusedException(NothingToJudge(chart, rate));
        var (celsius, note) = AsPrinted(temperature, rate, judged);
        var down = judged.TakeWhile(IsDown).Count();
        if (down == 0 || judged.Max(x => x.Value.Celsius) < celsius)
        {
            throw new RefusedException(OutsideScale(temperature, celsius, chart, rate, judged, temperatureField));
        }

        var reached = judged[down - 1];
        var next = down < judged.Count ? judged[down] : null;
        var margin = Margin(reached, celsius, rate);
        double? nextMargin = next is null ? null : Margin(next, celsius, rate);
        double? fraction = nextMargin is { } missing ? Math.Max(0, margin) / (Math.Max(0, margin) - missing) : null;
        EndPointValue[] used = next is null ? [reached.Value] : [reached.Value, next.Value];
        return new(
            charts.Dataset.VersionId,
            Celsius: Math.Round(temperature.Celsius, 4),
            Fahrenheit: Math.Round(temperature.Fahrenheit, 4),
            RateCelsiusPerHour: rate?.CelsiusPerHour,
            Chart: chart.Id,
            Reached: reached.Cone.Cone.ToString(),
            Next: next?.Cone.Cone.ToString(),
            Fraction: fraction is { } f ? Shown(f) : null,
            MarginCelsiusDifference: Math.Round(margin, 4),
            MarginFahrenheitDifference: Math.Round(margin * 1.8, 4),
            NextMarginCelsiusDifference: nextMargin is { } n ? Math.Round(n, 4) : null,
            Reading: Say(reached.Cone.Cone, next?.Cone.Cone, fraction),
            OutOfOrder: [.. judged.Skip(down).Where(IsDown).Select(x => x.Cone.Cone.ToString())],
            LeftOut: [.. chart.Cones.Select(c => c.Cone).Except(judged.Select(x => x.Cone.Cone)).Select(c => c.ToString())],
            Basis: used.Max(v => v.Basis),
            Confidence: ConfidenceOrder.Weakest(used.Select(v => v.Confidence)),
            ComputedFrom: [.. used.SelectMany(v => v.Cells).Distinct().Select(PrintedCells.Point)],
            BorrowedFrom: charts.BorrowedBy(used),
            Notes: Notes(note, chart, rate, reached, next),
            Sources: EndPointCalculator.SourcesOf(used),
            Assumed: question.Assumed);

        // A hair short of its end point is down, as in any firing.
        bool IsDown(JudgedCone cone) => cone.Value.Celsius <= celsius
            || (cone.Value.Celsius - celsius < 1 && HeatMargin.IsJustDown(Margin(cone, celsius, rate)));
    }

    /// <summary>A fraction of the way to the next cone as a number: to four places and never 1.</summary>
    public static double Shown(double fraction) => Math.Min(0.9999, Math.Round(Math.Max(0, fraction), 4));

    /// <summary>That number as it is said: its first two places, cut off. What rounding left of a whole place counts as one.</summary>
    public static double Said(double fraction) => Math.Floor((Shown(fraction) * 100) + 1e-9) / 100;

    /// <summary>“6 and 0.47 of the way to 7”, cut off and not rounded up; never 6.47, which is no cone.</summary>
    internal static Message Say(Cone reached, Cone? next, double? fraction) => next is null || fraction is not { } f
        ? Message.Of("cones.reading-last", ("reached", reached.ToString()))
        : Message.Of(
            "cones.reading-between",
            ("reached", reached.ToString()), ("fraction", Said(f)), ("next", next.ToString()));

    // A chart's °F are its °C rounded: 1945 °F is printed for 1063 °C, though it converts to 1062.8.
    private static (decimal Celsius, Message? Note) AsPrinted(Temperature temperature, HeatingRate? rate, List<JudgedCone> judged)
    {
        if (temperature.GivenFahrenheit is not { } given) return (temperature.Celsius, null);
        var cell = judged.Select(x => x.Cone.CellAt(rate)).FirstOrDefault(c => c?.Fahrenheit == given);
        return cell is null || cell.Celsius == temperature.Celsius
            ? (temperature.Celsius, null)
            : (cell.Celsius, Message.Of("cones.read-as-printed", ("fahrenheit", given), ("cone", cell.Cone), ("celsius", cell.Celsius)));
    }

    private static Finding NothingToJudge(ConeChart chart, HeatingRate? rate) => new(
        FindingCodes.RateNotComputable, "rate", rate?.ToString(),
        Message.Of("cones.none-computable", ("chart", chart.Id), ("rate", rate?.ToString())),
        Message.Verbatim(chart.Rates.Select(r => $"{r}C/h")), Message.Of("cones.ask-for-a-printed-rate"));

    private static double Margin(JudgedCone cone, decimal celsius, HeatingRate? rate)
    {
        // Without a rate, or where the chart has one rate and nothing to borrow, plain degrees are all there is.
        if (rate is not { } r || cone.Cone.Curve(r) is not { } curve) return (double)(celsius - cone.Value.Celsius);
        return HeatMargin.OfLog(curve, curve.LogK(Temperature.FromCelsius(celsius).Kelvin) - Math.Log((double)r.CelsiusPerHour));
    }

    private static List<Message> Notes(Message? note, ConeChart chart, HeatingRate? rate, JudgedCone reached, JudgedCone? next)
    {
        List<Message> notes = note is null ? [] : [note];
        notes.AddRange(EndPointNotes.For(chart, reached.Cone, rate, reached.Value));
        if (next is not null) notes.AddRange(EndPointNotes.For(chart, next.Cone, rate, next.Value));
        notes.Add(Message.Of("cones.record-work"));
        return [.. notes.Distinct()];
    }

    private static Finding OutsideScale(
        Temperature temperature, decimal celsius, ConeChart chart, HeatingRate? rate, List<JudgedCone> judged, string field)
    {
        var (low, high) = (judged[0], judged.MaxBy(x => x.Value.Celsius)!);
        var asked = string.Create(CultureInfo.InvariantCulture, $"{temperature.Celsius:0.##}C");
        var at = rate?.ToString() ?? "none";
        return new(
            FindingCodes.TemperatureOutsideScale, field, asked,
            Message.Of("cones.outside-scale", ("temperature", asked), ("chart", chart.Id), ("rate", at)),
            [
                Message.Of(
                    "cones.scale-range",
                    ("low", low.Value.Celsius), ("low-cone", low.Cone.Cone.ToString()),
                    ("high", high.Value.Celsius), ("high-cone", high.Cone.Cone.ToString()), ("rate", at)),
            ],
            OtherScale(temperature, celsius, low.Value.Celsius, high.Value.Celsius)
                ?? (celsius < low.Value.Celsius
                    ? Message.Of("cones.none-down", ("cone", low.Cone.Cone.ToString()))
                    : Message.Of("cones.all-down", ("cone", high.Cone.Cone.ToString()))));
    }

    // The likeliest slip is the other scale's letter; named when it would give an answer.
    private static Message? OtherScale(Temperature temperature, decimal celsius, decimal lowest, decimal highest)
    {
        if (temperature.GivenFahrenheit is { } given)
        {
            return given >= lowest && given <= highest ? Message.Of("cones.looks-celsius", ("number", given)) : null;
        }

        var converted = Temperature.FromFahrenheit(celsius).Celsius;
        return converted >= lowest && converted <= highest
            ? Message.Of("cones.looks-fahrenheit", ("number", celsius), ("celsius", converted))
            : null;
    }

    private sealed record JudgedCone(ChartCone Cone, EndPointValue Value);
}
