using ConeService.Contract.Kilns;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Schedules;

/// <summary>What the kiln makes of the programme, by the lumped model: energy within ±20 % when the load's mass is known.</summary>
/// <param name="Id">Your name for the kiln.</param>
/// <param name="Heat">What heats it.</param>
/// <param name="VolumeLitres">Inner volume, L.</param>
/// <param name="AvailableKilowatts">Power that is really there, kW: rated × (V/V₀)² ÷ ageing of the elements.</param>
/// <param name="CanFollow">True when the kiln stays within 10 °C of every ramp up; one that cools more slowly than asked is said so in
/// <paramref name="Instead"/>.</param>
/// <param name="Segments">What it does in each segment.</param>
/// <param name="HeatWork">What the firing, as the kiln really does it, does to the cones.</param>
/// <param name="PeakCelsius">Highest temperature of the chamber, °C.</param>
/// <param name="PeakMinutes">From the start to that moment, minutes.</param>
/// <param name="EndMinutes">From the start to the end of the programme, minutes.</param>
/// <param name="OpeningMinutes">From the start until chamber and ware stay below 95 °C, minutes; null when that takes more than
/// 24,000.</param>
/// <param name="Energy">Energy and where it goes.</param>
/// <param name="Fuel">Fuel of a gas kiln; null for an electric one.</param>
/// <param name="Cost">What it costs; null without a tariff.</param>
/// <param name="Instead">What the kiln does instead, and which cone that reaches; null when it follows.</param>
/// <param name="Remedies">What helps, the simplest first; empty when nothing is amiss.</param>
public sealed record KilnForecast(
    string? Id,
    KilnHeat Heat,
    double VolumeLitres,
    double AvailableKilowatts,
    bool CanFollow,
    IReadOnlyList<SegmentOutcome> Segments,
    FitHeatWork HeatWork,
    double PeakCelsius,
    double PeakMinutes,
    double EndMinutes,
    double? OpeningMinutes,
    KilnEnergy Energy,
    KilnFuel? Fuel,
    FitCost? Cost,
    Message? Instead,
    IReadOnlyList<FitRemedy> Remedies);

/// <summary>What the firing costs.</summary>
/// <param name="Amount">Energy × price; for gas without a factor of your own null.</param>
/// <param name="Low">The low end: −20 % of electricity; for gas the lower bound × the usual low factor.</param>
/// <param name="High">The high end.</param>
/// <param name="Currency">ISO 4217 code.</param>
public sealed record FitCost(double? Amount, double Low, double High, string Currency);

/// <summary>Something that helps a kiln that can't follow.</summary>
/// <param name="Code">slower-ramps, slower-end, longer-hold, lower-peak, lighter-load, full-voltage, new-elements, cooler-cone or
/// slower-cooling.</param>
/// <param name="Message">What to do and what comes of it.</param>
/// <param name="Programme">The programme to use instead, where that is the remedy.</param>
/// <param name="Reading">The cone that it reaches, as one says it; null where it was not computed.</param>
/// <param name="CanFollow">True when the kiln then stays within 10 °C of every ramp up; null where it was not computed.</param>
/// <param name="EndMinutes">From the start to the end of the programme then, minutes.</param>
/// <param name="EnergyKilowattHours">Energy to the chamber then, kWh.</param>
public sealed record FitRemedy(
    string Code,
    Message Message,
    FittedProgramme? Programme,
    Message? Reading,
    bool? CanFollow = null,
    double? EndMinutes = null,
    double? EnergyKilowattHours = null);
