using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Schedules;

/// <summary>One template with its segments, as handed on and not yet fitted.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Schedule">The template.</param>
/// <param name="Units">C or F: the unit of the sentences in <paramref name="Segments"/>.</param>
/// <param name="Chart">The chart whose end points stand for cones.</param>
/// <param name="Segments">The segments, in order.</param>
/// <param name="Notes">What a user of the template must know.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Assumed">Parameters that were left out, with what was taken.</param>
public sealed record ScheduleDetail(
    string DatasetVersion,
    [property: Flat] ScheduleSummary Schedule,
    string Units,
    string Chart,
    IReadOnlyList<TemplateSegment> Segments,
    IReadOnlyList<Message> Notes,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed);

/// <summary>One segment of a template.</summary>
/// <param name="Number">Place in the template, from 1.</param>
/// <param name="InWords">The segment as one says it, in the units asked for.</param>
/// <param name="Stage">What it is for; the data package's reading of the purpose.</param>
/// <param name="Purpose">What it is for, in words.</param>
/// <param name="RateCelsiusPerHour">Rate, up or down, °C/h; null: as fast as the kiln goes.</param>
/// <param name="RateFahrenheitPerHour">The same, °F/h.</param>
/// <param name="TargetCone">Where to, as a cone; null when the target is a temperature.</param>
/// <param name="TargetBelowCelsiusDifference">How far below the peak of that cone, °C.</param>
/// <param name="TargetCelsius">Where to, °C; for a cone the end point of a steady ramp at this rate, before any hold is reckoned
/// with.</param>
/// <param name="TargetFahrenheit">The same, °F.</param>
/// <param name="HoldMinutes">Hold at the target, minutes.</param>
/// <param name="Atmosphere">Atmosphere in the kiln.</param>
/// <param name="AtmosphereNote">How strong, where, or when.</param>
/// <param name="Vent">How the kiln is vented.</param>
/// <param name="VentNote">How, in words.</param>
/// <param name="PublishedFields">Which figures the source states; the others are practice or follow from these.</param>
/// <param name="Confidence">How far the segment can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Row">Address of its row of the data package, with the places in its sources.</param>
public sealed record TemplateSegment(
    int Number,
    Message InWords,
    FiringStage Stage,
    string Purpose,
    decimal? RateCelsiusPerHour,
    decimal? RateFahrenheitPerHour,
    string? TargetCone,
    decimal? TargetBelowCelsiusDifference,
    decimal TargetCelsius,
    decimal TargetFahrenheit,
    decimal HoldMinutes,
    [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere Atmosphere,
    string? AtmosphereNote,
    VentSetting Vent,
    string? VentNote,
    IReadOnlyList<PublishedField> PublishedFields,
    Confidence Confidence,
    string? Note,
    IReadOnlyList<string> Sources,
    Address Row);
