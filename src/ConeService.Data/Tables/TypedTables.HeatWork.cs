namespace ConeService.Data;

/// <summary>The tables behind heat-work answers.</summary>
internal static partial class TypedTables
{
    public static TypedTable<ThermocoupleToleranceRow> ThermocoupleTolerances { get; } = new(
        "thermocouple-tolerances", ["id"],
        [Column.Text("id"), Column.Text("type"), Column.Text("standard"), Column.Text("class"), Column.Text("formula") with { Words = ["beyond", "greater"] }, Column.Number("floor_celsius"), Column.Number("share_of_celsius"), Column.OptionalNumber("from_celsius"), Column.Number("lowest_celsius"), Column.OptionalNumber("highest_celsius"), Column.Source(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("id"), r.Text("type"), r.Text("standard"), r.Text("class"), r.Text("formula"), r.Number("floor_celsius"), r.Number("share_of_celsius"), r.OptionalNumber("from_celsius"), r.Number("lowest_celsius"), r.OptionalNumber("highest_celsius"), r.Text("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<HeatWorkDefaultRow> HeatWorkDefaults { get; } = new(
        "heat-work-defaults", ["id"],
        [Column.Text("id"), Column.Number("value"), Column.Text("unit"), Column.Text("meaning"), Column.Source(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("id"), r.Number("value"), r.Text("unit"), r.Text("meaning"), r.Text("source"), r.Confidence("confidence"), r.OptionalText("note")));

    private static IReadOnlyList<TypedTable> HeatWork => [ThermocoupleTolerances, HeatWorkDefaults];
}
