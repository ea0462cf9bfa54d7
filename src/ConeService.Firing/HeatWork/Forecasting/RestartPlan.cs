using ConeService.Contract.Quantities;
using ConeService.Firing.Cones;
using ConeService.Firing.Schedules.Fitting;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>The programme from here that advice starts with: what is left of the caller's, or a usual one.</summary>
internal static class RestartPlan
{
    // Through here quartz in the ware changes its size, going up as going down (landmarks: 573 °C, and the ware lags).
    private const double QuartzFrom = 500 + Temperature.KelvinAtZero;
    private const double QuartzTo = 650 + Temperature.KelvinAtZero;

    // Ordinary studio practice for ware of ordinary walls (docs/schedules.md); thick ware goes more slowly.
    private const double QuartzKelvinPerHour = 100;
    private const double ClimbKelvinPerHour = 150;

    // Charts print the rate of the last 100 °C, and 60 °C/h in the middle of their columns.
    private const double LastRampKelvin = 100;
    private const double LastRampKelvinPerHour = HeatMargin.Rate;

    /// <summary>The plan.</summary>
    /// <param name="now">Where the log ends, K.</param>
    /// <param name="rest">What is left of the caller's programme; null when nothing is.</param>
    /// <param name="reheats">True when the kiln has fallen and climbs again.</param>
    /// <param name="curve">The cone.</param>
    /// <param name="grid">What the controller can be told.</param>
    public static IReadOnlyList<HeatSegment> Of(
        double now, IReadOnlyList<HeatSegment>? rest, bool reheats, BendingCurve curve, ControllerGrid grid)
    {
        var plan = rest ?? Usual(now, curve, grid);
        return reheats ? ThroughQuartz(now, plan) : plan;
    }

    private static List<HeatSegment> Usual(double now, BendingCurve curve, ControllerGrid grid)
    {
        double OnGrid(double kelvin) => grid.Temperature(kelvin - Temperature.KelvinAtZero) + Temperature.KelvinAtZero;
        var peak = Math.Max(OnGrid(now), OnGrid(curve.EndPoint(LastRampKelvinPerHour)));
        var approach = OnGrid(peak - LastRampKelvin);
        var plan = new List<HeatSegment>();
        if (now < approach) plan.Add(new(ClimbKelvinPerHour, approach));
        plan.Add(new(LastRampKelvinPerHour, peak));
        return plan;
    }

    private static List<HeatSegment> ThroughQuartz(double now, IReadOnlyList<HeatSegment> plan)
    {
        var (slow, from) = (new List<HeatSegment>(plan.Count + 2), now);
        foreach (var segment in plan)
        {
            var crosses = from < QuartzTo && segment.TargetKelvin > Math.Max(from, QuartzFrom);
            if (crosses && !(segment.RateKelvinPerHour <= QuartzKelvinPerHour))
            {
                if (from < QuartzFrom) slow.Add(segment with { TargetKelvin = QuartzFrom, HoldHours = 0 });
                var through = Math.Min(QuartzTo, segment.TargetKelvin);
                slow.Add(new(QuartzKelvinPerHour, through, through == segment.TargetKelvin ? segment.HoldHours : 0));
                if (through < segment.TargetKelvin) slow.Add(segment);
            }
            else
            {
                slow.Add(segment);
            }

            from = segment.TargetKelvin;
        }

        return slow;
    }
}
