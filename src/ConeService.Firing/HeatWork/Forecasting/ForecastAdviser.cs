using ConeService.Contract.HeatWork;
using ConeService.Contract.Quantities;
using ConeService.Firing.Cones;
using ConeService.Firing.Schedules.Fitting;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>
/// The hold, and the peak, of the hottest segment that is left which put a cone just down: the work of the log counts, and each
/// candidate is fired ahead, by the kiln where one is modelled.
/// </summary>
/// <param name="curve">The cone.</param>
/// <param name="done">What the log did to it.</param>
/// <param name="ahead">Fires ahead.</param>
/// <param name="grid">What the controller can be told.</param>
internal sealed class ForecastAdviser(BendingCurve curve, double done, IFiresAhead ahead, ControllerGrid grid)
{
    private const double Zero = Temperature.KelvinAtZero;
    private const double LongestHoldHours = 24;
    private const int MostRounds = 8;
    private const double CloseProgress = 0.002;

    // What whole degrees and whole minutes may leave: half a degree near the top is some hundredths of a cone.
    private const double Allowed = 0.05;

    /// <summary>The hold, in whole minutes; null when none up to a day puts the cone just down.</summary>
    public Advised? Hold(IReadOnlyList<HeatSegment> plan)
    {
        var peak = PeakOf(plan);
        var perHour = curve.BendRate(plan[peak].TargetKelvin);
        if (!(perHour > 1e-6)) return null;
        var hold = plan[peak].HoldHours;
        for (var round = 0; round < MostRounds; round++)
        {
            Patience.Check();
            // Progress is linear in the hold, but for what a longer soak does to the cooling.
            var missing = 1 - Try(plan, peak, plan[peak] with { HoldHours = hold }).Progress;
            var next = Math.Clamp(hold + (missing / perHour), 0, LongestHoldHours);
            var settled = Math.Abs(missing) < CloseProgress || next == hold;
            hold = next;
            if (settled) break;
        }

        var whole = Math.Round(hold * 60, MidpointRounding.AwayFromZero) / 60;
        return Accept(Try(plan, peak, plan[peak] with { HoldHours = whole }), ForecastChange.Hold);
    }

    /// <summary>The target, in whole degrees, with the hold as it stands; null when none puts the cone just down.</summary>
    /// <param name="plan">The programme.</param>
    /// <param name="now">Where the log ends, K: a peak below it is a cooling.</param>
    /// <param name="highest">The hottest that the kiln may be, K.</param>
    public Advised? Peak(IReadOnlyList<HeatSegment> plan, double now, double highest)
    {
        var peak = PeakOf(plan);
        var lowest = plan.Where((_, i) => i != peak).Select(s => s.TargetKelvin).Append(now).Max();
        if (lowest >= highest) return null;
        var kelvin = Math.Clamp(plan[peak].TargetKelvin, lowest, highest);
        for (var round = 0; round < MostRounds; round++)
        {
            Patience.Check();
            var (need, made) = (1 - done, Try(plan, peak, plan[peak] with { TargetKelvin = kelvin }).Progress - done);
            if (need <= 0 || made <= 0) return null;
            // The work of a ramp, a hold and a cooling all grow as K(T) does: Newton's rule in ln of the work.
            var next = Math.Clamp(kelvin + (Math.Log(need / made) / curve.Slope(kelvin)), lowest, highest);
            var settled = Math.Abs(next - kelvin) < 0.05;
            kelvin = next;
            if (settled) break;
        }

        var whole = grid.Peak(kelvin - Zero) + Zero;
        return Accept(Try(plan, peak, plan[peak] with { TargetKelvin = whole }), ForecastChange.Peak);
    }

    private static Advised? Accept(Advised tried, ForecastChange change) =>
        Math.Abs(tried.Progress - 1) <= Allowed && tried.Ahead.Finishes ? tried with { Change = change } : null;

    private Advised Try(IReadOnlyList<HeatSegment> plan, int peak, HeatSegment changed)
    {
        IReadOnlyList<HeatSegment> tried = [.. plan.Select((s, i) => i == peak ? changed : s)];
        var fired = ahead.Fire(tried);
        return new(tried, peak, fired, done + (fired.History is { } history ? HeatIntegral.Progress(curve, history) : 0), default);
    }

    // The last of the hottest, as inverse questions have it.
    private static int PeakOf(IReadOnlyList<HeatSegment> plan) => new HeatProgramme(1, plan, 1).PeakSegment;
}

/// <summary>A programme that puts the cone just down.</summary>
/// <param name="Plan">Its segments.</param>
/// <param name="Segment">Index of the segment that was changed.</param>
/// <param name="Ahead">How it goes.</param>
/// <param name="Progress">Progress of the cone at the end of all.</param>
/// <param name="Change">What was changed.</param>
internal sealed record Advised(
    IReadOnlyList<HeatSegment> Plan, int Segment, FiringAhead Ahead, double Progress, ForecastChange Change);
