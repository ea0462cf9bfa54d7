using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>What a firing does to the cones around a target.</summary>
internal static class FitReadings
{
    // Cones shown on either side of the target.
    private const int Around = 4;

    /// <summary>The answer's part.</summary>
    public static FitHeatWork Of(ScaleWork work, HeatHistory history, FitTarget? target, double? lastRampShare)
    {
        var centre = target?.Cone.Cone ?? work.Reached?.Cone.Cone ?? work.Cones[0].Cone.Cone;
        var at = work.Cones.TakeWhile(c => c.Cone.Cone < centre).Count();
        var aim = target is null ? null : work.Cones.FirstOrDefault(c => c.Cone.Cone == target.Cone.Cone);
        var next = target?.Next is { } n ? work.Cones.FirstOrDefault(c => c.Cone.Cone == n.Cone) : null;
        return new(
            work.Reached?.Cone.Cone.ToString(),
            work.Next?.Cone.Cone.ToString(),
            work.Fraction is { } fraction ? ReadingCalculator.Shown(fraction) : null,
            Say(work),
            TargetProgress: Told(aim),
            NextProgress: Told(next),
            TargetMarginCelsiusDifference: Rounded(aim?.MarginKelvin, 2),
            LastRampShare: Rounded(lastRampShare, 3),
            Cones: [.. work.Cones.Skip(Math.Max(0, at - Around)).Take((2 * Around) + 1).Select(c => Of(c, history))]);
    }

    /// <summary>“6 and 0.47 of the way to 7”.</summary>
    public static Message Say(ScaleWork work) => (work.Reached?.Cone.Cone, work.Next?.Cone.Cone) switch
    {
        (null, { } next) => Message.Of("schedules.reading-below", ("next", next.ToString())),
        ({ } reached, null) => Message.Of("schedules.reading-hotter", ("reached", reached.ToString())),
        ({ } reached, { } next) => Message.Of(
            "schedules.reading-between", ("reached", reached.ToString()),
            ("fraction", work.Fraction is { } f ? ReadingCalculator.Said(f) : null), ("next", next.ToString())),
        _ => Message.Of("schedules.reading-none"),
    };

    private static FitCone Of(ConeWork cone, HeatHistory history)
    {
        var bend = cone.BendDegrees;
        return new(
            cone.Cone.Cone.ToString(),
            Math.Round(ConeWork.Told(cone.Progress), 4),
            Math.Round(bend, 1),
            Math.Round(ConeBend.Clock(bend), 2),
            FitMinutes.Of(cone.DownAtHours),
            cone.DownAtHours is { } hours ? Math.Round(NaturalRates.TemperatureAt(history, hours), 1) : null);
    }

    private static double? Told(ConeWork? cone) => cone is null ? null : Rounded(ConeWork.Told(cone.Progress), 4);

    private static double? Rounded(double? value, int digits) => value is { } v && double.IsFinite(v) ? Math.Round(v, digits) : null;
}
