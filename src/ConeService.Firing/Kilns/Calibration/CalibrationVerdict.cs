using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Kilns.Calibration;

/// <summary>What a keeper should know of the kiln, the most important first.</summary>
internal static class CalibrationVerdict
{
    // Elements due for replacement give a tenth less (kiln-defaults, element-rise); a leak of 2 is an open vent.
    private const double WornShare = 0.9;
    private const double OpenVent = 2;

    /// <summary>The sentences.</summary>
    public static IReadOnlyList<Message> Of(
        KilnEstimate wall, KilnEstimate leak, KilnEstimate power, CalibrationTrend trend, MeterOffset? offset)
    {
        var told = new List<Message>();
        if (trend.Offset is { Drifts: true } drift)
            told.AddRange(new[] { drift.Message, drift.Suggests }.OfType<Message>());
        if (trend.Power is { Creeps: true, PercentPerFiring: < 0 } fade)
            told.Add(Message.Of("calibration.power-fades", ("percent", -fade.PercentPerFiring), ("firings", fade.Firings)));
        else if (trend.Duration is { Creeps: true, PercentPerFiring: > 0 } longer)
            told.Add(Message.Of("calibration.takes-longer", ("percent", longer.PercentPerFiring), ("firings", longer.Firings)));
        if (trend.Energy is { Creeps: true, PercentPerFiring: > 0 } more)
            told.Add(Message.Of("calibration.takes-more", ("percent", more.PercentPerFiring), ("firings", more.Firings)));
        if (power is { Value: { } kilowatts, StandardError: { } error } && kilowatts + (2 * error) < WornShare * power.Before)
            told.Add(Message.Of("calibration.power-low", ("kilowatts", kilowatts), ("rated", power.Before)));
        if (leak is { Value: >= OpenVent })
            told.Add(Message.Of("calibration.leaky", ("leak", leak.Value)));
        if (trend.Offset is not { Drifts: true } && offset?.CelsiusDifference is not null) told.Add(offset.Message);
        if (told.Count == 0) told.Add(Message.Of("calibration.nothing-amiss"));
        told.Add(Message.Of(
            "calibration.send-kiln",
            ("told", (wall.Value ?? leak.Value ?? power.Value) is null ? "nothing" : "something")));
        return told;
    }
}
