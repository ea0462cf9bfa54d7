using ConeService.Contract.Kilns;

namespace ConeService.Firing.Kilns;

/// <summary>How the kiln went through one segment. "Can follow" means a lag of less than 10 K behind the set-point.</summary>
/// <param name="Index">Number of the segment in the programme, from 0.</param>
/// <param name="Following">What the kiln did.</param>
/// <param name="StartHours">When the segment began, h.</param>
/// <param name="RampEndHours">When the chamber reached the target and the hold began, h; null when it never did.</param>
/// <param name="EndHours">When the segment ended, h.</param>
/// <param name="PlannedHours">Ramp and hold as programmed, h; null without a rate.</param>
/// <param name="StartCelsius">Chamber at the begin, °C.</param>
/// <param name="EndCelsius">Chamber at the end, °C.</param>
/// <param name="LargestLagKelvin">Furthest the chamber stood behind the set-point, K; 0 without a rate.</param>
/// <param name="FollowsToCelsius">Chamber temperature up to which it followed, °C; where the lag first exceeded the limit; null when it
/// followed all the way.</param>
/// <param name="MeanRateCelsiusPerHour">Rate over the whole ramp as it went, °C/h, above 0 in the direction of the ramp; null without a
/// ramp.</param>
/// <param name="LastRateCelsiusPerHour">Rate over the last 50 °C of the ramp, or the whole of a shorter one, °C/h; what to programme
/// instead.</param>
/// <param name="LargestKilowatts">Most power used, kW into the chamber.</param>
/// <param name="LoadLagKelvin">How far the load stood behind the chamber when the ramp ended, K.</param>
internal sealed record SegmentRun(
    int Index,
    Following Following,
    double StartHours,
    double? RampEndHours,
    double EndHours,
    double? PlannedHours,
    double StartCelsius,
    double EndCelsius,
    double LargestLagKelvin,
    double? FollowsToCelsius,
    double? MeanRateCelsiusPerHour,
    double? LastRateCelsiusPerHour,
    double LargestKilowatts,
    double LoadLagKelvin);
