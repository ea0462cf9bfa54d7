using ConeService.Contract.Kilns;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// When vents, damper and atmosphere are set: at the end of the segment that ends there, else where the curve passes the temperature.
/// </summary>
internal static class SettingPeriods
{
    // A target of the template is put on a round temperature this near.
    private const double SameCelsius = 3;
    private const double ShortMinutes = 0.05;

    /// <summary>The periods of the kiln as it was modelled, or of the programme, in order and without a gap.</summary>
    public static List<SettingPeriod> Of(
        FittedSteps fitted, IReadOnlyList<FittedSegment> segments, KilnPrediction? prediction, HeatHistory curve)
    {
        var ends = prediction is null
            ? segments.Select(s => (double?)s.EndMinutes).ToList()
            : [.. prediction.Segments.Select(s => s.Following == Following.NotRun || s.RampEndHours is null
                ? null : (double?)FitMinutes.Of(s.EndHours))];
        return Of(fitted, ends, curve, FitMinutes.Of(prediction?.HoursToEnd ?? fitted.Hours));
    }

    /// <summary>The settings within each segment of the programme, by the programme.</summary>
    public static List<FittedSegment> Within(FittedSteps fitted, IReadOnlyList<FittedSegment> segments, HeatHistory programme)
    {
        var periods = Of(fitted, segments, null, programme);
        return [.. segments.Select(segment =>
        {
            var within = periods
                .Where(p => Math.Min(p.ToMinutes, segment.EndMinutes) - Math.Max(p.FromMinutes, segment.StartMinutes) > ShortMinutes)
                .Select(p => new SegmentSetting(
                    p.Vent, p.VentNote, p.Atmosphere, p.AtmosphereNote,
                    UntilCelsius: p.ToMinutes < segment.EndMinutes - ShortMinutes ? p.ToCelsius : (double)segment.TargetCelsius))
                .ToList();
            if (within is not [var first, ..]) return segment;
            return segment with
            {
                Settings = within,
                Vent = first.Vent,
                VentNote = first.VentNote,
                Atmosphere = first.Atmosphere,
                AtmosphereNote = first.AtmosphereNote,
            };
        })];
    }

    /// <summary>What is set by hand in the middle of a segment, where the controller marks nothing.</summary>
    public static IEnumerable<FitChange> ByHand(IReadOnlyList<FittedSegment> segments, bool fahrenheit)
    {
        foreach (var segment in segments)
        {
            foreach (var (a, b) in segment.Settings.Zip(segment.Settings.Skip(1)))
            {
                var target = QuantityFormat.Temperature(a.UntilCelsius, fahrenheit);
                List<Message> sentences = [];
                if (a.Vent != b.Vent || a.VentNote != b.VentNote)
                {
                    sentences.Add(Message.Of(
                        "schedules.vent-by-hand", ("target", target), ("from", Vent(a.Vent)), ("to", Vent(b.Vent))));
                }

                if (a.Atmosphere != b.Atmosphere || a.AtmosphereNote != b.AtmosphereNote)
                    sentences.Add(Message.Of("schedules.atmosphere-by-hand", ("target", target)));
                yield return new(FitChangeCode.Lost, segment.TemplateSegments, Message.Sentences(sentences));
            }
        }
    }

    private static List<SettingPeriod> Of(FittedSteps fitted, IReadOnlyList<double?> ends, HeatHistory curve, double end)
    {
        var (marks, found, now, from) = (fitted.Settings, new List<SettingPeriod>(), 0.0, fitted.StartCelsius);
        for (var i = 0; i < marks.Count; i++)
        {
            var mark = marks[i];
            if (i + 1 < marks.Count && mark.SameSetting(marks[i + 1])) continue;
            var celsius = Celsius(mark, fitted);
            // The last setting stays until the programme ends; what a kiln never reaches stays as it is.
            var to = i + 1 == marks.Count ? end : Moment(i, celsius, fitted, ends, curve) ?? end;
            if (to - now > ShortMinutes)
            {
                found.Add(new(
                    mark.Vent, mark.VentNote, mark.Atmosphere, mark.AtmosphereNote, Math.Round(from, 1), Math.Round(celsius, 1),
                    mark.Cooling, now, to, null, null));
                (now, from) = (to, celsius);
            }

            if (to >= end) break;
        }

        return found;
    }

    /// <summary>Where a setting ends, °C.</summary>
    internal static double Celsius(SettingMark mark, FittedSteps fitted) => mark switch
    {
        { Target: StepTarget.Peak } => fitted.PeakCelsius,
        { Target: StepTarget.BelowPeak } => fitted.PeakCelsius - mark.Below,
        { Cooling: false } => Math.Min(mark.Celsius, fitted.PeakCelsius),
        _ => mark.Celsius,
    };

    private static double? Moment(int index, double celsius, FittedSteps fitted, IReadOnlyList<double?> ends, HeatHistory curve)
    {
        var mark = fitted.Settings[index];
        for (var i = fitted.Steps.Count - 1; i >= 0; i--)
        {
            var step = fitted.Steps[i];
            var own = mark.From.Count > 0 ? mark.From.Any(step.From.Contains) : step.From.Count == 0;
            if (!own || Math.Abs(step.Celsius - celsius) > SameCelsius) continue;
            // Later settings at the same temperature have their holds at the end of the segment.
            var later = fitted.Settings.Skip(index + 1)
                .Where(m => m.Target == mark.Target && m.From.Any(step.From.Contains))
                .Where(m => Math.Abs(Celsius(m, fitted) - celsius) <= SameCelsius)
                .Sum(m => m.HoldMinutes);
            return ends[i] is { } end ? end - Math.Min(later, step.HoldMinutes) : null;
        }

        return FitMinutes.Of(HistoryCrossing.At(curve, celsius, !mark.Cooling));
    }

    private static string Vent(VentSetting vent) => EnumWords.Word(vent).Replace('-', ' ');
}
