namespace ConeService.Data;

/// <summary>The tables of schedules.</summary>
internal static partial class TypedTables
{
    public static TypedTable<ScheduleTemplateRow> ScheduleTemplates { get; } = new(
        "schedule-templates", since: new(1, 4), keyFields: 1, r => new(
        r.Text("id"), r.Text("title"), r.Word<FiringKind>("kind"), r.OptionalCone("end_cone"),
        r.OptionalCone("cone_min"), r.OptionalCone("cone_max"),
        r.OptionalWord<Confidence>("range_confidence"), r.Word("atmosphere", Atmospheres.OfFirings),
        r.WordList<KilnHeat>("kiln_heats"), r.WordList<PieceState>("takes"), r.OptionalNumber("thickness_max_millimetres"),
        r.OptionalNumber("hours_min"), r.OptionalNumber("hours_max"), r.OptionalText("hours_note"), r.SourceList(),
        r.Confidence(), r.OptionalText("note"), r.Evidence())
        {
            IsUsual = r.Since(1, 7).OptionalWord<YesNo>("usual") == YesNo.Yes,
        });

    public static TypedTable<ScheduleSegmentRow> ScheduleSegments { get; } = new(
        "schedule-segments", since: new(1, 4), keyFields: 2, r => new(
        r.Reference("schedule", "schedule-templates"), r.Integer("number"), r.Word<FiringStage>("stage"),
        r.OptionalNumber("rate_celsius_per_hour"), r.OptionalNumber("target_celsius"),
        r.OptionalCone("target_cone"), r.OptionalNumber("target_below_celsius"), r.Number("hold_minutes"),
        r.Text("purpose"), r.Word("atmosphere", Atmospheres.OfFirings), r.OptionalText("atmosphere_note"),
        r.Word<VentSetting>("vent"), r.OptionalText("vent_note"), r.OptionalWordList<PublishedField>("published_fields"),
        r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ThicknessLimitRow> ThicknessLimits { get; } = new("thickness-limits", since: new(1, 4), keyFields: 2, r => new(
        r.Word<WaterBand>("band"), r.Number("thickness_millimetres"), r.Number("from_celsius"), r.Number("to_celsius"),
        r.Number("rate_celsius_per_hour"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ScheduleDefaultRow> ScheduleDefaults { get; } = new(
        "schedule-defaults", since: new(1, 4), keyFields: 1, r => new(
        r.Text("id"), r.Number("value"), r.Text("unit"), r.Text("statement"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ProcedureRow> Procedures { get; } = new("procedures", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Word<ProcedurePhase>("phase"), r.Integer("number"), r.OptionalWordList<FiringKind>("kinds"),
        r.OptionalWordList<KilnHeat>("heats"), r.OptionalReferenceList("schedules", "schedule-templates"),
        r.OptionalWord<YesNo>("reduces"), r.Text("statement"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<AttendanceRow> Attendances { get; } = new("attendances", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Word<AttendanceMoment>("moment"), r.OptionalWordList<FiringKind>("kinds"),
        r.OptionalWordList<KilnHeat>("heats"), r.OptionalReferenceList("schedules", "schedule-templates"),
        r.Number("before_minutes"), r.Number("after_minutes"), r.Text("statement"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    private static IReadOnlyList<TypedTable> Schedules =>
        [ScheduleTemplates, ScheduleSegments, ThicknessLimits, ScheduleDefaults, Procedures, Attendances];
}
