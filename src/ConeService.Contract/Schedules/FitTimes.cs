using ConeService.Data;

namespace ConeService.Contract.Schedules;

/// <summary>When what happens. Hours count from the start of the programme.</summary>
/// <param name="Start">The start; null when none was given.</param>
/// <param name="Loading">When loading begins.</param>
/// <param name="PeakHours">The peak, hours from the start.</param>
/// <param name="Peak">The peak.</param>
/// <param name="EndHours">The end of the programme.</param>
/// <param name="End">The same.</param>
/// <param name="OpeningHours">The earliest opening: chamber and ware below 95 °C; null when unknown.</param>
/// <param name="Opening">The same.</param>
/// <param name="Vents">How the kiln is vented, in order.</param>
/// <param name="Basis">kiln-model, or programme where no kiln was modelled: then the cooling is a guess.</param>
public sealed record FitTimes(
    DateTimeOffset? Start,
    DateTimeOffset? Loading,
    double PeakHours,
    DateTimeOffset? Peak,
    double EndHours,
    DateTimeOffset? End,
    double? OpeningHours,
    DateTimeOffset? Opening,
    IReadOnlyList<VentPeriod> Vents,
    string Basis);

/// <summary>A time with one setting of the vent.</summary>
/// <param name="Vent">The setting.</param>
/// <param name="Note">How, in words.</param>
/// <param name="FromHours">From, hours from the start.</param>
/// <param name="ToHours">To.</param>
/// <param name="ToCelsius">The temperature at its end, °C.</param>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
public sealed record VentPeriod(
    VentSetting Vent,
    string? Note,
    double FromHours,
    double ToHours,
    double ToCelsius,
    DateTimeOffset? From,
    DateTimeOffset? To);
