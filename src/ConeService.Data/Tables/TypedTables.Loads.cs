namespace ConeService.Data;

/// <summary>The tables of kilns, firings and the rules of loading.</summary>
internal static partial class TypedTables
{
    public static TypedTable<KilnHeatRow> KilnHeats { get; } = new(
        "kiln-heats", ["id"],
        [
            Column.Word<KilnHeat>("id"), Column.Text("name"), Column.Word<KilnReduction>("reduction"), Column.Number("clearance_millimetres"),
            Column.ReferenceList("cautions", "cautions"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Word<KilnHeat>("id"), r.Text("name"), r.Word<KilnReduction>("reduction"), r.Number("clearance_millimetres"), r.List("cautions"), r.List("source"),
            r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<FiringKindRow> FiringKinds { get; } = new(
        "firing-kinds", ["id"],
        [
            Column.Word<FiringKind>("id"), Column.Text("name"), Column.WordList<KilnHeat>("kiln_heats"), Column.WordList<FiringAtmosphere>("atmospheres"),
            Column.Word<ReasonSeverity>("wrong_atmosphere"), Column.OptionalText("wrong_atmosphere_effect"), Column.Reference("cone_min", "cones"),
            Column.Reference("cone_max", "cones"), Column.WordList<PieceState>("takes"), Column.Word<YesNo>("first_fire"), Column.Word<WareFood>("food"),
            Column.Text("takes_in"), Column.Text("does_to_others"), Column.ReferenceList("cautions", "cautions"), Column.SourceList(), Column.Confidence(),
            Column.OptionalText("note"),
        ],
        r => new(
            r.Word<FiringKind>("id"), r.Text("name"), r.Words<KilnHeat>("kiln_heats"), r.Words<FiringAtmosphere>("atmospheres"),
            r.Word<ReasonSeverity>("wrong_atmosphere"), r.OptionalText("wrong_atmosphere_effect"), r.Text("cone_min"), r.Text("cone_max"),
            r.Words<PieceState>("takes"), r.Word<YesNo>("first_fire"), r.Word<WareFood>("food"), r.Text("takes_in"), r.Text("does_to_others"), r.List("cautions"),
            r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<LoadRuleRow> LoadRules { get; } = new(
        "load-rules", ["id"],
        [
            Column.Text("id"), Column.Text("topic"), Column.Text("rule"), Column.Word<RuleSeverity>("severity"), Column.OptionalNumber("value_min"),
            Column.OptionalNumber("value_max"), Column.OptionalText("unit"), Column.OptionalReference("cone_min", "cones"),
            Column.OptionalReference("cone_max", "cones"), Column.List("applies_to"), Column.OptionalWordList<ReasonCode>("reason_codes"),
            Column.OptionalText("rationale"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("topic"), r.Text("rule"), r.Word<RuleSeverity>("severity"), r.OptionalNumber("value_min"), r.OptionalNumber("value_max"),
            r.OptionalText("unit"), r.OptionalText("cone_min"), r.OptionalText("cone_max"), r.List("applies_to"), r.Words<ReasonCode>("reason_codes"),
            r.OptionalText("rationale"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    private static IReadOnlyList<TypedTable> Loads => [KilnHeats, FiringKinds, LoadRules];
}
