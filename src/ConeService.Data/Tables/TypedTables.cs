namespace ConeService.Data;

/// <summary>Every table the service reads, and how a row of it becomes a record.</summary>
internal static partial class TypedTables
{
    public static TypedTable<SourceRow> Sources { get; } = new(
        "sources", ["id"],
        [Column.Text("id"), Column.Text("kind"), Column.Text("citation"), Column.OptionalText("year"), Column.OptionalText("locator"), Column.Text("rights"), Column.Text("seen")],
        r => new(r.Text("id"), r.Text("kind"), r.Text("citation"), r.OptionalText("year"), r.OptionalText("locator"), r.Text("rights"), r.Text("seen")));

    public static TypedTable<ConeRow> Cones { get; } = new(
        "cones", ["id"],
        [Column.Text("id"), Column.Number("position"), Column.Text("kind"), Column.OptionalInteger("whole_step"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("id"), r.Number("position"), r.Text("kind"), r.OptionalInteger("whole_step"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ChartRow> Charts { get; } = new(
        "charts", ["id"],
        [Column.Text("id"), Column.Text("title"), Column.Text("cone_form"), Column.Text("composition"), Column.Source(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("id"), r.Text("title"), r.Text("cone_form"), r.Text("composition"), r.Text("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<EndPointRow> EndPoints { get; } = new(
        "end-points", ["chart", "cone", "rate_celsius_per_hour"],
        [Column.Reference("chart", "charts"), Column.Reference("cone", "cones"), Column.OptionalNumber("rate_celsius_per_hour"), Column.Number("celsius"), Column.OptionalNumber("fahrenheit"), Column.Source(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("chart"), r.Text("cone"), r.OptionalNumber("rate_celsius_per_hour"), r.Number("celsius"), r.OptionalNumber("fahrenheit"), r.Text("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ConeFactRow> ConeFacts { get; } = new(
        "cone-facts", ["id"],
        [Column.Text("id"), Column.Text("topic"), Column.Text("statement"), Column.OptionalText("value_printed"), Column.OptionalNumber("value_low"), Column.OptionalNumber("value_high"), Column.OptionalText("unit"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("id"), r.Text("topic"), r.Text("statement"), r.OptionalText("value_printed"), r.OptionalNumber("value_low"), r.OptionalNumber("value_high"), r.OptionalText("unit"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<BendingEnergyRow> BendingEnergies { get; } = new(
        "bending-energies", ["chart", "cone"],
        [Column.Reference("chart", "charts"), Column.Reference("cone", "cones"), Column.Number("activation_energy_kilojoules_per_mole"), Column.Source(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("chart"), r.Text("cone"), r.Number("activation_energy_kilojoules_per_mole"), r.Text("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<CorrectionRow> Corrections { get; } = new(
        "corrections", ["table", "key", "field"],
        [Column.Text("table"), Column.Text("key"), Column.Text("field"), Column.Text("printed"), Column.Text("adopted"), Column.Text("reason"), Column.Text("evidence"), Column.SourceList(), Column.Confidence()],
        r => new(r.Text("table"), r.Text("key"), r.Text("field"), r.Text("printed"), r.Text("adopted"), r.Text("reason"), r.Text("evidence"), r.List("source"), r.Confidence("confidence")));

    public static TypedTable<RenamedIdRow> RenamedIds { get; } = new(
        "renamed-ids", ["table", "old"],
        [Column.Text("table"), Column.Text("old"), Column.Text("new"), Column.Text("since")],
        r => new(r.Text("table"), r.Text("old"), r.Text("new"), r.Text("since")))
    { Optional = true };

    // Made on first use: the order in which the parts of this class are initialised is not defined.
    public static IReadOnlyList<TypedTable> All => field ??= [Sources, Cones, Charts, EndPoints, ConeFacts, BendingEnergies, Corrections, RenamedIds, .. HeatWork, .. Practice, .. Colour, .. Loads, .. Materials, .. Schedules, .. Kilns];
}
