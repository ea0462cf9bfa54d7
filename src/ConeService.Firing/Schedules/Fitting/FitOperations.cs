using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>The firing as an operating procedure: who must be there when, when to look, and what to do.</summary>
internal sealed class FitOperations(ScheduleCatalogue catalogue, FitQuestion question)
{
    // What packages of before 1.7 do without.
    private const double ShutOffMinutes = 60;
    private const double PeakPercent = 5;

    // Two looks nearer than this are one.
    private const double OneLook = 12;
    private const double LeastSpan = 15;
    private const double SamePeak = 2;

    private readonly KilnHeat heat = question.Heat ?? question.Schedule.Row.KilnHeats[0];
    private readonly bool reduces = FitCautions.Reduces(question);

    /// <summary>The procedure.</summary>
    public FitOperation Of(
        FittedSteps fitted, IReadOnlyList<FittedSegment> segments, KilnPrediction? prediction, HeatHistory curve, FitTimes times)
    {
        var hot = PeakEnd(fitted, segments, prediction, times);
        var off = FitMinutes.Of(hot / 60) + catalogue.Default("latest-shut-off", ShutOffMinutes);
        double? latest = Controlled ? off : null;
        return new(
            question.Clock.Zone?.Id,
            Attendance(times, hot),
            Checks(times, hot, curve),
            latest,
            question.Clock.At(latest / 60),
            Span(times.PeakMinutes, Math.Max(LeastSpan, times.PeakMinutes * catalogue.Default("peak-span", PeakPercent) / 100)),
            times is { OpeningSpanMin: { } soonest, OpeningSpanMax: { } latestOpening }
                ? new(soonest, latestOpening, times.OpeningFrom, times.OpeningTo)
                : null,
            [.. catalogue.Dataset.Procedures
                .Where(p => Belongs(p.Kinds, p.Heats, p.Schedules) && (p.Reduces is not { } only || only == YesNo.Yes == reduces))
                .OrderBy(p => p.Phase).ThenBy(p => p.Number).ThenBy(p => p.Id, StringComparer.Ordinal)
                .Select(p => new ProcedureStep(p.Id, p.Phase, Message.Verbatim(p.Statement)!, p.Confidence, p.Sources))]);
    }

    // Raku ends with the draw, wood and open fires with the stoking.
    private bool Controlled => heat is not (KilnHeat.Wood or KilnHeat.Raku) && !question.Drawn;

    private bool Belongs(IReadOnlyList<FiringKind> kinds, IReadOnlyList<KilnHeat> heats, IReadOnlyList<string> schedules) =>
        Attendances.Belongs(kinds, heats, schedules, question.Schedule.Row.Kind, heat, question.Schedule.Id);

    // The end of the last hold at the peak, minutes; what cools is no danger of going too far.
    private static double PeakEnd(FittedSteps fitted, IReadOnlyList<FittedSegment> segments, KilnPrediction? prediction, FitTimes times)
    {
        var last = fitted.Steps.ToList().FindLastIndex(s => s.Celsius >= fitted.PeakCelsius - SamePeak);
        var end = prediction is { Segments: var runs } && last < runs.Count
            ? FitMinutes.Of(runs[last].EndHours)
            : segments[last].EndMinutes;
        return Math.Clamp(end, times.PeakMinutes, Math.Max(times.PeakMinutes, times.EndMinutes));
    }

    private TimeSpanForeseen Span(double minutes, double half)
    {
        var (from, to) = (Math.Round(minutes - half), Math.Round(minutes + half));
        return new(from, to, question.Clock.At(from / 60), question.Clock.At(to / 60));
    }

    private List<AttendancePeriod> Attendance(FitTimes times, double hot)
    {
        var attended = new AttendedTimes(
            Math.Max(times.EndMinutes, hot), (times.PeakMinutes, hot), [.. times.Settings.Skip(1).Select(s => s.FromMinutes)],
            [.. times.Vents.Where(v => v.Vent is VentSetting.Open or VentSetting.Propped).Select(v => (v.FromMinutes, v.ToMinutes))]);
        return [.. Attendances.Of(
            catalogue.Dataset, question.Schedule.Row.Kind, heat, question.Schedule.Id, attended, question.AttendedThroughout)
            .Select(p => p with { From = question.Clock.At(p.FromMinutes / 60), To = question.Clock.At(p.ToMinutes / 60) })];
    }

    private List<CheckTime> Checks(FitTimes times, double hot, HeatHistory curve)
    {
        List<(double Minutes, Message What)> looks =
        [
            .. Math.Min(30, times.PeakMinutes / 4) is var early && heat == KilnHeat.Electric
                ? [(early, Message.Of("schedules.check-start"))]
                : Array.Empty<(double, Message)>(),
            .. times.Settings.Skip(1).Select(s => (s.FromMinutes, Message.Of("schedules.check-setting"))),
            .. new[] { 60.0, 30 }.Where(m => m < times.PeakMinutes / 2)
                .Select(m => (times.PeakMinutes - m, Message.Of(
                    question.Target is null ? "schedules.check-before-peak" : "schedules.check-before-peak-cones",
                    ("before", QuantityFormat.Duration(m))))),
            (times.PeakMinutes, Message.Of(question.Target is null ? "schedules.check-peak" : "schedules.check-peak-cones")),
            (hot + 15, Message.Of(Controlled ? "schedules.check-off" : "schedules.check-after")),
        ];
        var found = new List<CheckTime>();
        foreach (var (minutes, what) in looks.OrderBy(l => l.Minutes))
        {
            if (found is [.., var last] && minutes - last.Minutes < OneLook)
            {
                if (!last.Message.Equals(what)) found[^1] = last with { Message = Message.Sentences(last.Message, what) };
                continue;
            }

            found.Add(new(Math.Round(minutes), question.Clock.At(minutes / 60), Expected(curve, minutes / 60), what));
        }

        return found;
    }

    private static double Expected(HeatHistory curve, double hours)
    {
        var points = curve.Points;
        var (low, high) = (0, points.Length - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (points[middle].Hours <= hours) low = middle;
            else high = middle;
        }

        var share = Math.Clamp((hours - points[low].Hours) / (points[high].Hours - points[low].Hours), 0, 1);
        return Math.Round(points[low].Kelvin + (share * (points[high].Kelvin - points[low].Kelvin)) - Temperature.KelvinAtZero);
    }
}
