namespace ConeService.Data;

/// <summary>One segment of a template: go to a target, then hold there.</summary>
/// <param name="Schedule">Id of the template.</param>
/// <param name="Number">Place in the template, from 1.</param>
/// <param name="Stage">What it is for; this package's reading of the purpose.</param>
/// <param name="RateCelsiusPerHour">Rate, up or down, °C/h; null: as fast as the kiln goes.</param>
/// <param name="TargetCelsius">Where to, °C; null when the target is a cone.</param>
/// <param name="TargetCone">Where to, as a cone; null when the target is a temperature.</param>
/// <param name="TargetBelowCelsius">How far below the peak of the target cone, °C.</param>
/// <param name="HoldMinutes">Hold at the target, min.</param>
/// <param name="Purpose">What it is for, in words.</param>
/// <param name="Atmosphere">Atmosphere in the kiln.</param>
/// <param name="AtmosphereNote">How strong, where, or when.</param>
/// <param name="Vent">How the kiln is vented.</param>
/// <param name="VentNote">How, in words.</param>
/// <param name="PublishedFields">Which figures the source states; the others are practice or follow from these.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ScheduleSegmentRow(
    string Schedule, int Number, FiringStage Stage, decimal? RateCelsiusPerHour, decimal? TargetCelsius, string? TargetCone,
    decimal? TargetBelowCelsius, decimal HoldMinutes,
    string Purpose, Atmosphere Atmosphere, string? AtmosphereNote, VentSetting Vent, string? VentNote,
    IReadOnlyList<PublishedField> PublishedFields,
    IReadOnlyList<string> Sources, Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
