using ConeService.Data;

namespace ConeService.Contract.Schedules;

/// <summary>When what happens. Minutes count from the start of the programme.</summary>
/// <param name="Start">The start; null when none was given.</param>
/// <param name="Loading">When loading begins.</param>
/// <param name="PeakMinutes">The peak, minutes from the start.</param>
/// <param name="Peak">The peak.</param>
/// <param name="EndMinutes">The end of the programme.</param>
/// <param name="End">The same.</param>
/// <param name="OpeningMinutes">The earliest opening: chamber and ware below 95 °C; null when unknown.</param>
/// <param name="Opening">The same.</param>
/// <param name="Vents">How the kiln is vented, in order.</param>
/// <param name="Basis">kiln-model, or programme where no kiln was modelled: then the cooling is a guess.</param>
public sealed record FitTimes(
    DateTimeOffset? Start,
    DateTimeOffset? Loading,
    double PeakMinutes,
    DateTimeOffset? Peak,
    double EndMinutes,
    DateTimeOffset? End,
    double? OpeningMinutes,
    DateTimeOffset? Opening,
    IReadOnlyList<VentPeriod> Vents,
    string Basis);

/// <summary>A time with one setting of the vent.</summary>
/// <param name="Vent">The setting.</param>
/// <param name="Note">How, in words.</param>
/// <param name="FromMinutes">From, minutes from the start.</param>
/// <param name="ToMinutes">To.</param>
/// <param name="ToCelsius">The temperature at its end, °C.</param>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
public sealed record VentPeriod(
    VentSetting Vent,
    string? Note,
    double FromMinutes,
    double ToMinutes,
    double ToCelsius,
    DateTimeOffset? From,
    DateTimeOffset? To);
