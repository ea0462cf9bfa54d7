using ConeService.Contract.Kilns;

namespace ConeService.Firing.Kilns.Thermal;

/// <summary>How a ramp goes: how far behind, since where, and whether it still moves.</summary>
/// <param name="direction">1 up, −1 down, 0 none.</param>
/// <param name="hours">Start, h.</param>
/// <param name="kelvin">Chamber at the start, K.</param>
internal sealed class RampWatch(int direction, double hours, double kelvin)
{
    private bool stalled;

    public int Direction => direction;

    /// <summary>True when the chamber is at the target, or the ramp was given up.</summary>
    public bool Ended { get; set; }

    /// <summary>True when the ramp was given up.</summary>
    public bool Stalled
    {
        get => stalled;
        set
        {
            stalled = value;
            Ended |= value;
        }
    }

    /// <summary>Furthest behind the set-point, K.</summary>
    public double LargestLag { get; private set; }

    /// <summary>Chamber when it first fell behind, K; null as long as it follows.</summary>
    public double? FollowedTo { get; private set; }

    /// <summary>Start of the present watch, h.</summary>
    public double WatchedHours { get; private set; } = hours;

    /// <summary>Chamber at that moment, K.</summary>
    public double WatchedKelvin { get; private set; } = kelvin;

    /// <summary>What the kiln made of the segment.</summary>
    public Following Following => (stalled, FollowedTo, direction) switch
    {
        (true, _, > 0) => Following.Stalls,
        (true, _, _) => Following.CoolsSlower,
        (_, null, _) => Following.Follows,
        (_, _, > 0) => Following.TooSlow,
        _ => Following.CoolsSlower,
    };

    public void Lag(double setPoint, double chamber)
    {
        var lag = direction * (setPoint - chamber);
        LargestLag = Math.Max(LargestLag, lag);
        if (lag >= KilnModel.FollowingKelvin) FollowedTo ??= chamber;
    }

    public void Watch(double now, double chamber) => (WatchedHours, WatchedKelvin) = (now, chamber);
}
