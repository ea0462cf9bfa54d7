using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Kilns.Thermal;

/// <summary>
/// A controller before a kiln. The set-point climbs by the clock; at the target it waits for the chamber, and only
/// then the hold begins. A chamber that hardly climbs at full power short of the target ends the firing.
/// </summary>
internal sealed class FiringRun(
    HeatBalance balance, FiringRecord record, Func<double, double> mostWatts, double dryKelvin, double stepSeconds)
{
    private const double Arrived = 0.02;
    private const double StallWatchHours = 1;
    private const double LastRateSpan = 50;

    private double watts, largestWatts, setPoint;

    /// <summary>Time since the start, h.</summary>
    public double Hours { get; private set; }

    /// <summary>Heat of the fuel burnt so far, J; 0 for an electric kiln.</summary>
    public double Fuel { get; private set; }

    /// <summary>Share of the fuel's heat that stays at a chamber temperature in K; null for an electric kiln.</summary>
    public Func<double, double>? Available { get; init; }

    /// <summary>Heat that air takes with the kiln vented so, W/K; null: always as closed.</summary>
    public Func<VentSetting, double>? LeakOf { get; init; }

    /// <summary>A programme that is not ended by then is not completed, h.</summary>
    public double LongestHours { get; init; } = KilnModel.LongestHours;

    /// <summary>Runs a segment.</summary>
    public SegmentRun Run(int index, KilnSegment segment)
    {
        var (startHours, from, target) = (Hours, balance.Chamber, segment.TargetCelsius + Temperature.KelvinAtZero);
        var direction = Math.Abs(target - from) <= Arrived ? 0 : Math.Sign(target - from);
        var ramp = new RampWatch(direction, Hours, from);
        (largestWatts, setPoint) = (0, from);
        while (direction != 0 && !ramp.Ended)
        {
            Patience.Check();
            Vent(segment.VentAt(balance.Chamber - Temperature.KelvinAtZero, direction));
            Advance(RampSeconds(segment.RateCelsiusPerHour, target));
            if (segment.RateCelsiusPerHour is not null) ramp.Lag(setPoint, balance.Chamber);
            ramp.Ended = setPoint == target && Math.Abs(balance.Chamber - target) <= Arrived;
            ramp.Stalled = !ramp.Ended && (Hours >= LongestHours || Stalls(ramp));
            record.Add(Hours, segment.RateCelsiusPerHour is null ? double.NaN : setPoint, watts, ramp.Ended);
        }

        var (rampEnd, loadLag) = (Hours, balance.Chamber - balance.Load);
        var lastRate = direction == 0 ? null : record.RateOverLast(LastRateSpan, startHours);
        Vent(segment.LastVent);
        if (!ramp.Stalled) Hold(target, segment.HoldHours);
        return new(
            index,
            ramp.Following,
            startHours,
            ramp.Stalled ? null : rampEnd,
            Hours,
            Planned(segment, target - from),
            from - Temperature.KelvinAtZero,
            balance.Chamber - Temperature.KelvinAtZero,
            ramp.LargestLag,
            ramp.FollowedTo - Temperature.KelvinAtZero,
            rampEnd > startHours ? Math.Abs((ramp.Stalled ? balance.Chamber : target) - from) / (rampEnd - startHours) : null,
            lastRate,
            largestWatts / 1000,
            loadLag);
    }

    /// <summary>Power off until chamber and load are below a temperature.</summary>
    /// <param name="below">The temperature, K.</param>
    /// <param name="longest">Not beyond this, h since the start.</param>
    /// <returns>When they are, h; null when it takes too long.</returns>
    public double? Cool(double below, double longest)
    {
        Vent(VentSetting.AsNormal);
        while (Math.Max(balance.Chamber, balance.Load) >= below)
        {
            Patience.Check();
            if (Hours >= longest) return null;
            // Below dull red nothing happens quickly any more.
            Step(balance.Chamber > 800 ? stepSeconds : 4 * stepSeconds, 0, 0);
            record.Add(Hours, double.NaN, 0);
        }

        record.Add(Hours, double.NaN, 0, always: true);
        return Hours;
    }

    private void Vent(VentSetting vent)
    {
        if (LeakOf is { } leak) balance.LeakConductance = leak(vent);
    }

    private static double? Planned(KilnSegment segment, double way) =>
        segment.RateCelsiusPerHour is { } rate ? (Math.Abs(way) / rate) + segment.HoldHours : null;

    // Moves the set-point on and says how long the step is; the last one ends at the target.
    private double RampSeconds(double? rate, double target)
    {
        if (rate is null) setPoint = target;
        if (rate is not { } perHour || setPoint == target) return stepSeconds;
        var (left, stride) = (Math.Abs(target - setPoint), perHour * stepSeconds / 3600);
        if (stride < left - 1e-9)
        {
            setPoint += Math.Sign(target - setPoint) * stride;
            return stepSeconds;
        }

        setPoint = target;
        return left / perHour * 3600;
    }

    private bool Stalls(RampWatch ramp)
    {
        // Steaming ware stands still for hours and then goes on.
        if (ramp.Direction < 0 || balance.Hottest < dryKelvin || watts < mostWatts(balance.Chamber) * 0.999)
        {
            ramp.Watch(Hours, balance.Chamber);
            return false;
        }

        if (Hours - ramp.WatchedHours < StallWatchHours) return false;
        var gained = (balance.Chamber - ramp.WatchedKelvin) / (Hours - ramp.WatchedHours);
        ramp.Watch(Hours, balance.Chamber);
        return gained < KilnModel.StallCelsiusPerHour;
    }

    private void Hold(double target, double hours)
    {
        setPoint = target;
        var end = Hours + hours;
        while (end - Hours > 1e-9 && Hours < LongestHours)
        {
            Patience.Check();
            Advance(Math.Min(stepSeconds, (end - Hours) * 3600));
            record.Add(Hours, setPoint, watts, end - Hours <= 1e-9);
        }
    }

    private void Advance(double seconds)
    {
        Step(seconds, setPoint, mostWatts(balance.Chamber));
        largestWatts = Math.Max(largestWatts, watts);
    }

    private void Step(double seconds, double wanted, double most)
    {
        watts = balance.Step(seconds, wanted, most);
        if (Available is not null) Fuel += watts * seconds / Available(balance.Chamber);
        Hours += seconds / 3600;
    }
}
