namespace ConeService.Data;

/// <summary>The tables of kilns, firings and the rules of loading.</summary>
internal static partial class TypedTables
{
    public static TypedTable<KilnHeatRow> KilnHeats { get; } = new("kiln-heats", since: new(1, 2), keyFields: 1, r => new(
        r.Word<KilnHeat>("id"), r.Text("name"), r.Word<KilnReduction>("reduction"), r.Number("clearance_millimetres"),
        r.ReferenceList("cautions", "cautions"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<FiringKindRow> FiringKinds { get; } = new("firing-kinds", since: new(1, 2), keyFields: 1, r => new(
        r.Word<FiringKind>("id"), r.Text("name"), r.WordList<KilnHeat>("kiln_heats"),
        r.WordList("atmospheres", Atmospheres.OfFirings), r.Word<ReasonSeverity>("wrong_atmosphere"),
        r.OptionalText("wrong_atmosphere_effect"), r.Cone("cone_min"), r.Cone("cone_max"),
        r.WordList<PieceState>("takes"), r.Word<YesNo>("first_fire"), r.Word<WareFood>("food"), r.Text("takes_in"),
        r.Text("does_to_others"), r.ReferenceList("cautions", "cautions"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    public static TypedTable<LoadRuleRow> LoadRules { get; } = new("load-rules", since: new(1, 2), keyFields: 1, r => new(
        r.Text("id"), r.Text("topic"), r.Text("rule"), r.Word<RuleSeverity>("severity"), r.OptionalNumber("value_min"),
        r.OptionalNumber("value_max"), r.OptionalText("unit"), r.OptionalCone("cone_min"),
        r.OptionalCone("cone_max"), r.List("applies_to"), r.OptionalWordList<ReasonCode>("reason_codes"),
        r.OptionalText("rationale"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<UsualFiringRow> UsualFirings { get; } = new("usual-firings", since: new(1, 7), keyFields: 2, r => new(
        r.Word<FiringKind>("firing_kind"), r.Cone("cone"), r.WordList("atmospheres", Atmospheres.OfFirings), r.SourceList(),
        r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<TradeWordRow> TradeWords { get; } = new("trade-words", since: new(1, 7), keyFields: 2, r => new(
        r.Text("vocabulary"), r.Text("word"), r.List("means"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    private static IReadOnlyList<TypedTable> Loads => [KilnHeats, FiringKinds, LoadRules, UsualFirings, TradeWords];
}
