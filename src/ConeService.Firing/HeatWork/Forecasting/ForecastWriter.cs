using System.Globalization;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Schedules.Fitting;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>Writes the answer to a question on a firing under way.</summary>
/// <param name="dataset">The data package.</param>
/// <param name="question">The question.</param>
internal sealed class ForecastWriter(Dataset dataset, ForecastQuestion question)
{
    private const double Zero = Temperature.KelvinAtZero;
    private const double RateHours = 0.5;

    /// <summary>Writes it.</summary>
    public Forecast Write(
        HeatWorkAnswer heatWork, ConeResult target, FiringAhead fired, Spans spans, Interruption? interruption, KilnFit? fit,
        ForecastVerdict verdict, IReadOnlyList<Advised> advised, double done)
    {
        var log = question.Log.History;
        var options = advised.Select(Option).ToList();
        var advice = new ForecastAdvice(verdict, Advice(verdict, target, interruption, options), options);
        var end = Moment(fired.EndHours, spans.EndFrom, spans.EndTo);
        var opening = fired.OpeningHours is { } open ? Moment(open, spans.OpenFrom, spans.OpenTo) : null;
        var assumed = question.Assumed.Concat(heatWork.Assumed.Select(a => a.InBody())).ToList();
        var inside = heatWork with { Assumed = [.. heatWork.Assumed.Select(a => a.InBody())] };
        var answer = new ForecastAnswer(
            dataset.VersionId,
            Chart: heatWork.Chart,
            Cone: target.Cone,
            Lines: [EndLine(fired, end), ConeLine(heatWork, target, advice), OpeningLine(opening)],
            Now: new(
                FitMinutes.Of(log.DurationHours), At(0), Math.Round(question.Now.Kelvin - Zero, 1), Math.Round(Rate(log), 1),
                Math.Round(done, 6)),
            End: end,
            Opening: opening,
            Target: target,
            Interruption: interruption is null ? null : new(
                FitMinutes.Of(interruption.From.Hours - log.Start.Hours),
                FitMinutes.Of(log.End.Hours - interruption.From.Hours),
                Math.Round(interruption.From.Kelvin - Zero, 1),
                Math.Round(interruption.Lowest.Kelvin - Zero, 1)),
            Advice: advice,
            Kiln: fit is null ? null : Kiln(fired, fit),
            HeatWork: inside,
            Cautions: ForecastCautions.Of(dataset, question.Heat, interruption is not null || question.Rest is null),
            Basis: heatWork.Basis,
            Confidence: Confidence.Estimate,
            Warnings: heatWork.Warnings,
            Notes: ForecastCautions.Notes(question.Kiln is not null, interruption is not null || question.Rest is null),
            Sources:
            [
                .. heatWork.Sources.Concat(question.Kiln?.Sources ?? []).Append("common-practice").Distinct(StringComparer.Ordinal),
            ],
            Assumed: assumed,
            TargetProgressMin: Math.Round(ConeWork.Told(Math.Max(0, spans.ProgressFrom)), 3),
            TargetProgressMax: Math.Round(ConeWork.Told(spans.ProgressTo), 3));
        return new(answer, log.ToCurve, fired.History is { } history ? () => Ahead(history, log.End.Hours) : null);
    }

    private static FiringCurve Ahead(HeatHistory history, double from)
    {
        var curve = history.ToCurve();
        return new([.. curve.Points.Select(p => p with { Hours = p.Hours + from })]);
    }

    private ForecastKiln Kiln(FiringAhead fired, KilnFit fit)
    {
        var before = question.Log.History.DurationHours;
        var segments = fired.Segments!.Select(s => (s with
        {
            StartHours = before + s.StartHours,
            RampEndHours = before + s.RampEndHours,
            EndHours = before + s.EndHours,
        }).Told()).ToList();
        return new(
            question.KilnId, question.Heat!.Value, segments.TrueForAll(s => s.Following == Contract.Kilns.Following.Follows),
            fired.Finishes, segments, fit.Told());
    }

    private ForecastOption Option(Advised advised)
    {
        var segment = advised.Plan[advised.Segment];
        var (f, celsius, minutes) = (question.Fahrenheit, segment.TargetKelvin - Zero, segment.HoldHours * 60);
        return new(
            advised.Change,
            advised.Segment + 1,
            Math.Round(celsius, 1),
            Math.Round(minutes, 1),
            segment.RateKelvinPerHour is { } rate ? Math.Round(rate, 1) : null,
            Message.Of(
                "forecast.option",
                ("temperature", QuantityFormat.Temperature(celsius, f)),
                ("rate", segment.RateKelvinPerHour is { } r ? QuantityFormat.Rate(r, f) : "none"),
                ("hold", minutes >= 0.5 ? QuantityFormat.Duration(minutes) : "none")),
            Math.Round(advised.Progress, 4),
            FitMinutes.Of(advised.Ahead.EndHours),
            new(f ? "F" : "C", Degrees(question.Now.Kelvin, 1), [.. advised.Plan.Select(s => new ForecastRamp(
                s.RateKelvinPerHour is { } perHour ? Math.Round(f ? perHour * 1.8 : perHour, 4) : null,
                Degrees(s.TargetKelvin, 4),
                Math.Round(s.HoldHours * 60, 4)))]));
    }

    private Message Advice(
        ForecastVerdict verdict, ConeResult target, Interruption? interruption, List<ForecastOption> options)
    {
        var cone = ("cone", (object?)target.Cone);
        var said = verdict switch
        {
            ForecastVerdict.AsProgrammed => Message.Of("forecast.as-programmed", cone),
            ForecastVerdict.Done => Message.Of("forecast.done", cone),
            ForecastVerdict.OutOfReach => Message.Of("forecast.out-of-reach", cone),
            ForecastVerdict.LessHeat => Message.Of(
                "forecast.less-heat", cone, ("past", QuantityFormat.Difference(target.MarginCelsiusDifference, question.Fahrenheit))),
            ForecastVerdict.MoreHeat => Message.Of(
                "forecast.more-heat", cone,
                ("programme", question.Rest is null ? "none" : "left"),
                ("short", QuantityFormat.Difference(-target.MarginCelsiusDifference, question.Fahrenheit))),
            _ => Message.Of(
                "forecast.interrupted", cone,
                ("verdict", EnumWords.Word(verdict)),
                ("from", QuantityFormat.Temperature(interruption!.From.Kelvin - Zero, question.Fahrenheit)),
                ("now", QuantityFormat.Temperature(question.Now.Kelvin - Zero, question.Fahrenheit))),
        };
        return options.Count == 0 ? said : Message.Sentences(said, options[0].Message);
    }

    private Message EndLine(FiringAhead fired, ForecastMoment end) => question.Rest is null
        ? Message.Of("forecast.line-off")
        : Message.Of(
            fired.Finishes ? "forecast.line-end" : "forecast.line-stall",
            ("remaining", QuantityFormat.Duration(end.RemainingMinutes)),
            ("from", QuantityFormat.Duration(end.SpanMinutesMin)),
            ("to", QuantityFormat.Duration(end.SpanMinutesMax)),
            ("clock", Clock(end.At)));

    private static Message ConeLine(HeatWorkAnswer heatWork, ConeResult target, ForecastAdvice advice) => Message.Sentences(
        Message.Of(
            "forecast.line-cone", ("cone", target.Cone), ("percent", target.ProbabilityDown * 100), ("reading", heatWork.Reading)),
        advice.Message);

    private static Message OpeningLine(ForecastMoment? opening) => opening is null
        ? Message.Of("forecast.line-never-open")
        : Message.Of(
            "forecast.line-open",
            ("remaining", QuantityFormat.Duration(opening.RemainingMinutes)),
            ("from", QuantityFormat.Duration(opening.SpanMinutesMin)),
            ("to", QuantityFormat.Duration(opening.SpanMinutesMax)),
            ("clock", Clock(opening.At)));

    private static string Clock(DateTimeOffset? at) => at?.ToString("d MMM HH:mm", CultureInfo.InvariantCulture) ?? "none";

    private ForecastMoment Moment(double hours, double from, double to) => new(
        FitMinutes.Of(question.Log.History.DurationHours + hours), At(hours), FitMinutes.Of(hours),
        FitMinutes.Of(from), FitMinutes.Of(to), At(from), At(to));

    // A clock has no use for seconds.
    private DateTimeOffset? At(double hours)
    {
        if (question.Start?.AddHours(question.Log.History.DurationHours + hours) is not { } time) return null;
        return new(time.Ticks - (time.Ticks % TimeSpan.TicksPerMinute), time.Offset);
    }

    private double Degrees(double kelvin, int digits) =>
        Math.Round(question.Fahrenheit ? ((kelvin - Zero) * 1.8) + 32 : kelvin - Zero, digits);

    private static double Rate(HeatHistory log)
    {
        var points = log.Points;
        var first = points.Length - 1;
        while (first > 0 && log.End.Hours - points[first].Hours < RateHours) first--;
        return (log.End.Kelvin - points[first].Kelvin) / (log.End.Hours - points[first].Hours);
    }
}
