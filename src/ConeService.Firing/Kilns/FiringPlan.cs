using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Kilns;

/// <summary>What the controller is told; afterwards the kiln cools by itself, closed.</summary>
/// <param name="Segments">The segments, in order; at least one.</param>
/// <param name="StartCelsius">Temperature of kiln and load at the start, °C.</param>
/// <param name="RoomCelsius">Temperature of the room, °C.</param>
public sealed record FiringPlan(IReadOnlyList<PlanSegment> Segments, double StartCelsius = 20, double RoomCelsius = 20)
{
    /// <summary>Kelvin at 0 °C.</summary>
    public const double KelvinAtZero = 273.15;

    /// <summary>The plan of a heat-work programme; its own idea of cooling and of full speed is left out, as the kiln decides both.</summary>
    public static FiringPlan Of(HeatProgramme programme, double roomCelsius = 20) => new(
        [.. programme.Segments.Select(s => new PlanSegment(s.RateKelvinPerHour, s.TargetKelvin - KelvinAtZero, s.HoldHours))],
        programme.StartKelvin - KelvinAtZero,
        roomCelsius);
}

/// <summary>Go to a temperature, then hold there.</summary>
/// <param name="RateCelsiusPerHour">How fast, °C/h, above 0 whether up or down; null: full power up, no power down.</param>
/// <param name="TargetCelsius">Where to, °C.</param>
/// <param name="HoldHours">How long to stay there, h. The hold starts when the chamber is there.</param>
public sealed record PlanSegment(double? RateCelsiusPerHour, double TargetCelsius, double HoldHours = 0);
