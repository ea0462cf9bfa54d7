namespace ConeService.Data;

/// <summary>The tables of schedules.</summary>
internal static partial class TypedTables
{
    public static TypedTable<ScheduleTemplateRow> ScheduleTemplates { get; } = new(
        "schedule-templates", ["id"],
        [
            Column.Text("id"), Column.Text("title"), Column.Word<FiringKind>("kind"), Column.OptionalReference("end_cone", "cones"), Column.OptionalReference("cone_min", "cones"),
            Column.OptionalReference("cone_max", "cones"), Column.OptionalWord<Confidence>("range_confidence"), Column.Word<FiringAtmosphere>("atmosphere"),
            Column.WordList<KilnHeat>("kiln_heats"), Column.WordList<PieceState>("takes"), Column.OptionalNumber("thickness_max_millimetres"), Column.OptionalNumber("hours_min"),
            Column.OptionalNumber("hours_max"), Column.OptionalText("hours_note"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("title"), r.Word<FiringKind>("kind"), r.OptionalText("end_cone"), r.OptionalText("cone_min"), r.OptionalText("cone_max"),
            r.OptionalWord<Confidence>("range_confidence"), r.Word<FiringAtmosphere>("atmosphere"), r.Words<KilnHeat>("kiln_heats"), r.Words<PieceState>("takes"),
            r.OptionalNumber("thickness_max_millimetres"), r.OptionalNumber("hours_min"), r.OptionalNumber("hours_max"), r.OptionalText("hours_note"),
            r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ScheduleSegmentRow> ScheduleSegments { get; } = new(
        "schedule-segments", ["schedule", "number"],
        [
            Column.Reference("schedule", "schedule-templates"), Column.OptionalInteger("number") with { Required = true }, Column.Word<FiringStage>("stage"),
            Column.OptionalNumber("rate_celsius_per_hour"), Column.OptionalNumber("target_celsius"), Column.OptionalReference("target_cone", "cones"),
            Column.OptionalNumber("target_below_celsius"), Column.Number("hold_minutes"), Column.Text("purpose"), Column.Word<FiringAtmosphere>("atmosphere"),
            Column.OptionalText("atmosphere_note"), Column.Word<VentSetting>("vent"), Column.OptionalText("vent_note"), Column.OptionalWordList<PublishedField>("published_fields"),
            Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("schedule"), r.OptionalInteger("number")!.Value, r.Word<FiringStage>("stage"), r.OptionalNumber("rate_celsius_per_hour"), r.OptionalNumber("target_celsius"),
            r.OptionalText("target_cone"), r.OptionalNumber("target_below_celsius"), r.Number("hold_minutes"), r.Text("purpose"), r.Word<FiringAtmosphere>("atmosphere"),
            r.OptionalText("atmosphere_note"), r.Word<VentSetting>("vent"), r.OptionalText("vent_note"), r.Words<PublishedField>("published_fields"),
            r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ThicknessLimitRow> ThicknessLimits { get; } = new(
        "thickness-limits", ["band", "thickness_millimetres"],
        [
            Column.Word<WaterBand>("band"), Column.Number("thickness_millimetres"), Column.Number("from_celsius"), Column.Number("to_celsius"), Column.Number("rate_celsius_per_hour"),
            Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Word<WaterBand>("band"), r.Number("thickness_millimetres"), r.Number("from_celsius"), r.Number("to_celsius"), r.Number("rate_celsius_per_hour"),
            r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ScheduleDefaultRow> ScheduleDefaults { get; } = new(
        "schedule-defaults", ["id"],
        [Column.Text("id"), Column.Number("value"), Column.Text("unit"), Column.Text("statement"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("id"), r.Number("value"), r.Text("unit"), r.Text("statement"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    private static IReadOnlyList<TypedTable> Schedules => [ScheduleTemplates, ScheduleSegments, ThicknessLimits, ScheduleDefaults];
}
