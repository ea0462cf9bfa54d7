namespace ConeService.Data;

/// <summary>The tables of clay bodies, coats and what sources disagree on.</summary>
internal static partial class TypedTables
{
    public static TypedTable<ClayBodyRow> ClayBodies { get; } = new(
        "clay-bodies", ["id"],
        [
            Column.Text("id"), Column.Text("name"), Column.OptionalText("description"), Column.Reference("bisque_cone_min", "cones"),
            Column.Reference("bisque_cone_max", "cones"), Column.OptionalReference("mature_cone_min", "cones"),
            Column.OptionalReference("mature_cone_best", "cones"), Column.OptionalReference("mature_cone_max", "cones"), Column.Word<FirstStep>("first_step"),
            Column.OptionalNumber("warp_cones_over_best"), Column.OptionalNumber("bloat_cones_over_best"), Column.OptionalNumber("slump_cones_over_best"),
            Column.OptionalNumber("melt_cones_over_best"), Column.OptionalNumber("bloat_cones_sooner_in_reduction"), Column.Text("underfired"),
            Column.Text("overfired"), Column.OptionalText("shelf"), Column.Word<HoldsWater>("holds_water"), Column.Word<ThermalShock>("thermal_shock"),
            Column.WordList<FiringAtmosphere>("atmospheres"), Column.OptionalText("colour_oxidation"), Column.OptionalText("colour_reduction"),
            Column.OptionalNumber("absorption_percent_min"), Column.OptionalNumber("absorption_percent_max"), Column.OptionalNumber("shrinkage_percent_min"),
            Column.OptionalNumber("shrinkage_percent_max"), Column.OptionalText("expansion_note"), Column.OptionalText("use_note"),
            Column.OptionalReferenceList("cautions", "cautions"), Column.SourceList(), Column.Confidence() with { Name = "range_confidence" }, Column.Confidence(),
            Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("name"), r.OptionalText("description"), r.Text("bisque_cone_min"), r.Text("bisque_cone_max"), r.OptionalText("mature_cone_min"),
            r.OptionalText("mature_cone_best"), r.OptionalText("mature_cone_max"), r.Word<FirstStep>("first_step"), r.OptionalNumber("warp_cones_over_best"),
            r.OptionalNumber("bloat_cones_over_best"), r.OptionalNumber("slump_cones_over_best"), r.OptionalNumber("melt_cones_over_best"),
            r.OptionalNumber("bloat_cones_sooner_in_reduction"), r.Text("underfired"), r.Text("overfired"), r.OptionalText("shelf"),
            r.Word<HoldsWater>("holds_water"), r.Word<ThermalShock>("thermal_shock"), r.Words<FiringAtmosphere>("atmospheres"), r.OptionalText("colour_oxidation"),
            r.OptionalText("colour_reduction"), r.OptionalNumber("absorption_percent_min"), r.OptionalNumber("absorption_percent_max"),
            r.OptionalNumber("shrinkage_percent_min"), r.OptionalNumber("shrinkage_percent_max"), r.OptionalText("expansion_note"), r.OptionalText("use_note"),
            r.OptionalList("cautions"), r.List("source"), r.Confidence("range_confidence"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<GlazeRow> Glazes { get; } = new(
        "glazes", ["id"],
        [
            Column.Text("id"), Column.Text("name"), Column.Word<CoatKind>("kind"), Column.Reference("cone_min", "cones"),
            Column.OptionalReference("cone_best", "cones"), Column.OptionalReference("cone_max", "cones"), Column.WordList<FiringAtmosphere>("atmospheres"),
            Column.OptionalText("atmosphere_note"), Column.Word<ReasonSeverity>("wrong_atmosphere"), Column.OptionalText("wrong_atmosphere_effect"),
            Column.OptionalReference("alternative", "glazes"), Column.WordList<FiringKind>("fired_in"), Column.WordList<PieceState>("applied_on"),
            Column.OptionalText("applied_to_note"), Column.Text("underfired"), Column.OptionalText("overfired"), Column.Word<RunRisk>("run_risk"),
            Column.OptionalText("run_note"), Column.OptionalWordList<Fume>("gives_off"), Column.OptionalWordList<Fume>("spoiled_by"),
            Column.Word<YesNo>("metallic"), Column.Word<CoatFood>("food"), Column.OptionalText("firings_note"), Column.OptionalText("third_fire_note"),
            Column.OptionalText("hazards_note"), Column.OptionalReferenceList("cautions", "cautions"), Column.SourceList(),
            Column.Confidence() with { Name = "range_confidence" }, Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("name"), r.Word<CoatKind>("kind"), r.Text("cone_min"), r.OptionalText("cone_best"), r.OptionalText("cone_max"),
            r.Words<FiringAtmosphere>("atmospheres"), r.OptionalText("atmosphere_note"), r.Word<ReasonSeverity>("wrong_atmosphere"),
            r.OptionalText("wrong_atmosphere_effect"), r.OptionalText("alternative"), r.Words<FiringKind>("fired_in"), r.Words<PieceState>("applied_on"),
            r.OptionalText("applied_to_note"), r.Text("underfired"), r.OptionalText("overfired"), r.Word<RunRisk>("run_risk"), r.OptionalText("run_note"),
            r.Words<Fume>("gives_off"), r.Words<Fume>("spoiled_by"), r.Word<YesNo>("metallic"), r.Word<CoatFood>("food"), r.OptionalText("firings_note"),
            r.OptionalText("third_fire_note"), r.OptionalText("hazards_note"), r.OptionalList("cautions"), r.List("source"), r.Confidence("range_confidence"),
            r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<DisagreementRow> Disagreements { get; } = new(
        "disagreements", ["id"],
        [
            Column.Text("id"), Column.Text("topic"), Column.OptionalList("concerns"), Column.Text("position_a"), Column.Reference("source_a", "sources"),
            Column.Text("position_b"), Column.Reference("source_b", "sources"), Column.OptionalText("comment"), Column.Text("adopted"), Column.SourceList(),
            Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("topic"), r.OptionalList("concerns"), r.Text("position_a"), r.Text("source_a"), r.Text("position_b"), r.Text("source_b"),
            r.OptionalText("comment"), r.Text("adopted"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    private static IReadOnlyList<TypedTable> Materials => [ClayBodies, Glazes, Disagreements];
}
