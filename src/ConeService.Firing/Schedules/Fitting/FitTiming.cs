using ConeService.Contract.Kilns;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>When what happens: by the kiln model where there is one, else by the programme.</summary>
internal static class FitTiming
{
    /// <summary>The times.</summary>
    public static FitTimes Of(
        FitQuestion question, FittedSteps fitted, IReadOnlyList<FittedSegment> segments, KilnPrediction? prediction, HeatHistory curve)
    {
        var peak = prediction?.HoursToPeak ?? curve.Peak.Hours;
        var end = prediction?.HoursToEnd ?? fitted.Hours;
        var opening = prediction is null ? Below(curve, KilnModel.OpeningCelsius, end) : prediction.HoursToOpening;
        DateTimeOffset? At(double? hours) => hours is { } h && question.Start is { } start ? Minute(start.AddHours(h)) : null;
        return new(
            question.Start,
            Loading: question.Start?.AddMinutes(-question.LoadingMinutes),
            PeakMinutes: FitMinutes.Of(peak),
            Peak: At(peak),
            EndMinutes: FitMinutes.Of(end),
            End: At(end),
            OpeningMinutes: FitMinutes.Of(opening),
            Opening: At(opening),
            Vents: [.. Vents(fitted, segments, prediction).Select(v => v with { From = At(v.FromMinutes / 60), To = At(v.ToMinutes / 60) })],
            Basis: prediction is null ? "programme" : "kiln-model");
    }

    private static IEnumerable<VentPeriod> Vents(FittedSteps fitted, IReadOnlyList<FittedSegment> segments, KilnPrediction? prediction)
    {
        VentPeriod? open = null;
        for (var i = 0; i < segments.Count; i++)
        {
            var (step, outcome) = (fitted.Steps[i], prediction?.Segments[i]);
            if (outcome?.Following == Following.NotRun) break;
            var from = FitMinutes.Of(outcome?.StartHours) ?? segments[i].StartMinutes;
            var to = FitMinutes.Of(outcome?.EndHours) ?? segments[i].EndMinutes;
            if (open is not null && open.Vent == step.Vent && open.Note == step.VentNote)
            {
                open = open with { ToMinutes = to, ToCelsius = Math.Round(step.Celsius, 1) };
                continue;
            }

            if (open is { Vent: not VentSetting.AsNormal }) yield return open;
            open = new(step.Vent, step.VentNote, from, to, Math.Round(step.Celsius, 1), null, null);
        }

        if (open is { Vent: not VentSetting.AsNormal }) yield return open;
    }

    // The last time the curve passes downwards.
    private static double? Below(HeatHistory curve, double celsius, double from)
    {
        var points = curve.Points;
        for (var i = points.Length - 1; i > 0; i--)
        {
            var (a, b) = (points[i - 1].Kelvin - Temperature.KelvinAtZero, points[i].Kelvin - Temperature.KelvinAtZero);
            if (a > celsius && b <= celsius)
                return points[i - 1].Hours + ((a - celsius) / (a - b) * (points[i].Hours - points[i - 1].Hours));
        }

        return curve.End.Kelvin - Temperature.KelvinAtZero <= celsius ? from : null;
    }

    // A booking calendar has no use for seconds.
    private static DateTimeOffset Minute(DateTimeOffset time) => new(time.Ticks - (time.Ticks % TimeSpan.TicksPerMinute), time.Offset);
}
