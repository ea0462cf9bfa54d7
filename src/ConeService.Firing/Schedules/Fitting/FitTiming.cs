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
        FitQuestion question, FittedSteps fitted, IReadOnlyList<FittedSegment> segments, KilnPrediction? prediction, HeatHistory curve,
        (double Least, double Most)? span)
    {
        var peak = prediction?.HoursToPeak ?? curve.Peak.Hours;
        var end = prediction?.HoursToEnd ?? fitted.Hours;
        var opening = prediction is null ? Below(curve, KilnModel.OpeningCelsius, end) : prediction.HoursToOpening;
        DateTimeOffset? At(double? hours) => question.Clock.At(hours);
        var settings = SettingPeriods.Of(fitted, segments, prediction, curve)
            .ConvertAll(s => s with { From = At(s.FromMinutes / 60), To = At(s.ToMinutes / 60) });
        return new(
            question.Start,
            Loading: At(-question.LoadingMinutes / 60),
            PeakMinutes: FitMinutes.Of(peak),
            Peak: At(peak),
            EndMinutes: FitMinutes.Of(end),
            End: At(end),
            OpeningMinutes: FitMinutes.Of(opening),
            Opening: At(opening),
            OpeningSpanMin: span?.Least * 60,
            OpeningSpanMax: span?.Most * 60,
            OpeningFrom: At(span?.Least),
            OpeningTo: At(span?.Most),
            Settings: settings,
            Vents: [.. Vents(settings)],
            Basis: prediction is null ? "programme" : "kiln-model");
    }

    // Vents alone, over changes of the atmosphere; what is as normal needs nobody.
    private static IEnumerable<VentPeriod> Vents(List<SettingPeriod> settings)
    {
        for (var i = 0; i < settings.Count; i++)
        {
            var (first, last) = (settings[i], i);
            while (last + 1 < settings.Count
                && settings[last + 1].Vent == first.Vent && settings[last + 1].VentNote == first.VentNote)
                last++;
            i = last;
            if (first.Vent == VentSetting.AsNormal) continue;
            yield return new(
                first.Vent, first.VentNote, first.FromMinutes, settings[last].ToMinutes, first.FromCelsius, settings[last].ToCelsius,
                settings[last].Cooling, first.From, settings[last].To);
        }
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
}
