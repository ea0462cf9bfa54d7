namespace ConeService.Contract.Kilns;

/// <summary>How the kiln went through one segment. "Can follow" means a lag of less than 10 K behind the set-point.</summary>
/// <param name="Segment">Number of the segment in the programme, from 1.</param>
/// <param name="Following">What the kiln did.</param>
/// <param name="StartMinutes">When the segment began, minutes from the start.</param>
/// <param name="RampEndMinutes">When the chamber reached the target and the hold began, minutes from the start; null when it never
/// did.</param>
/// <param name="EndMinutes">When the segment ended, minutes from the start.</param>
/// <param name="PlannedMinutes">Ramp and hold as programmed, minutes; null without a rate.</param>
/// <param name="StartCelsius">Chamber at the begin, °C.</param>
/// <param name="EndCelsius">Chamber at the end, °C.</param>
/// <param name="LargestLagCelsiusDifference">Furthest the chamber stood behind the set-point, K; 0 without a rate.</param>
/// <param name="FollowsToCelsius">Chamber temperature up to which it followed, °C; where the lag first exceeded the limit; null when it
/// followed all the way.</param>
/// <param name="MeanRateCelsiusPerHour">Rate over the whole ramp as it went, °C/h, above 0 in the direction of the ramp; null without a
/// ramp.</param>
/// <param name="LastRateCelsiusPerHour">Rate over the last 50 °C of the ramp, or the whole of a shorter one, °C/h; what to programme
/// instead.</param>
/// <param name="LargestKilowatts">Most power used, kW into the chamber.</param>
/// <param name="LoadLagCelsiusDifference">How far the load stood behind the chamber when the ramp ended, K.</param>
public sealed record SegmentOutcome(
    int Segment,
    Following Following,
    double StartMinutes,
    double? RampEndMinutes,
    double EndMinutes,
    double? PlannedMinutes,
    double StartCelsius,
    double EndCelsius,
    double LargestLagCelsiusDifference,
    double? FollowsToCelsius,
    double? MeanRateCelsiusPerHour,
    double? LastRateCelsiusPerHour,
    double LargestKilowatts,
    double LoadLagCelsiusDifference);

/// <summary>What a kiln makes of a segment.</summary>
public enum Following
{
    /// <summary>The chamber stays close to the set-point, or no rate was asked for.</summary>
    Follows,

    /// <summary>All power there is does not suffice: the chamber falls behind and comes late.</summary>
    TooSlow,

    /// <summary>With no power at all the kiln cools more slowly than was asked.</summary>
    CoolsSlower,

    /// <summary>At full power the chamber hardly climbs any more short of the target: the firing ends here.</summary>
    Stalls,

    /// <summary>Not run, as an earlier segment stalled.</summary>
    NotRun,
}
