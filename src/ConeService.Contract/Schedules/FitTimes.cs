using ConeService.Contract.Answers;
using ConeService.Contract.Json;
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
/// <param name="OpeningSpanMin">Between which half hours that is, minutes from the start, by what is not known of the kiln's leak and wall:
/// a kiln may be opened from the later end on without looking, before it only by the pyrometer. Null without a kiln model.</param>
/// <param name="OpeningSpanMax">The later end.</param>
/// <param name="OpeningFrom">The earlier end as a moment.</param>
/// <param name="OpeningTo">The later end as a moment.</param>
/// <param name="Settings">How vents, damper and atmosphere stand, in order and without a gap; each is set by hand at a temperature,
/// however few segments the controller holds.</param>
/// <param name="Vents">The same of the vents and dampers alone, where they are not as normal.</param>
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
    [property: RangeOf("openingSpanMinutes")] double? OpeningSpanMin,
    double? OpeningSpanMax,
    DateTimeOffset? OpeningFrom,
    DateTimeOffset? OpeningTo,
    IReadOnlyList<SettingPeriod> Settings,
    IReadOnlyList<VentPeriod> Vents,
    string Basis);

/// <summary>A time with one setting of the vent.</summary>
/// <param name="Vent">The setting.</param>
/// <param name="Note">How, in words.</param>
/// <param name="FromMinutes">From, minutes from the start.</param>
/// <param name="ToMinutes">To.</param>
/// <param name="FromCelsius">The temperature at its begin, °C.</param>
/// <param name="ToCelsius">The temperature at its end, °C.</param>
/// <param name="Cooling">True when it ends on the way down.</param>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
public sealed record VentPeriod(
    VentSetting Vent,
    string? Note,
    double FromMinutes,
    double ToMinutes,
    double FromCelsius,
    double ToCelsius,
    bool Cooling,
    DateTimeOffset? From,
    DateTimeOffset? To);

/// <summary>A time with one setting of vents, damper and atmosphere.</summary>
/// <param name="Vent">How the kiln is vented.</param>
/// <param name="VentNote">How, in words.</param>
/// <param name="Atmosphere">Atmosphere in the kiln.</param>
/// <param name="AtmosphereNote">How strong, where, or when.</param>
/// <param name="FromCelsius">The temperature at its begin, °C.</param>
/// <param name="ToCelsius">The temperature at its end, °C; with a hold there, the end of the hold.</param>
/// <param name="Cooling">True when it ends on the way down.</param>
/// <param name="FromMinutes">From, minutes from the start.</param>
/// <param name="ToMinutes">To.</param>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
public sealed record SettingPeriod(
    VentSetting Vent,
    string? VentNote,
    [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere Atmosphere,
    string? AtmosphereNote,
    double FromCelsius,
    double ToCelsius,
    bool Cooling,
    double FromMinutes,
    double ToMinutes,
    DateTimeOffset? From,
    DateTimeOffset? To);

/// <summary>One setting within a segment.</summary>
/// <param name="Vent">How the kiln is vented.</param>
/// <param name="VentNote">How, in words.</param>
/// <param name="Atmosphere">Atmosphere in the kiln.</param>
/// <param name="AtmosphereNote">How strong, where, or when.</param>
/// <param name="UntilCelsius">Up to, or in cooling down to, this temperature of the segment, °C; the last one to its end.</param>
public sealed record SegmentSetting(
    VentSetting Vent,
    string? VentNote,
    [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere Atmosphere,
    string? AtmosphereNote,
    double UntilCelsius);
