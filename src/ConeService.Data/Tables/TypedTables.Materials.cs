namespace ConeService.Data;

/// <summary>The tables of clay bodies, coats and what sources disagree on.</summary>
internal static partial class TypedTables
{
    public static TypedTable<ClayBodyRow> ClayBodies { get; } = new("clay-bodies", since: new(1, 2), keyFields: 1, r => new(
        r.Text("id"), r.Text("name"), r.OptionalText("description"), r.Cone("bisque_cone_min"),
        r.Cone("bisque_cone_max"), r.OptionalCone("mature_cone_min"),
        r.OptionalCone("mature_cone_best"), r.OptionalCone("mature_cone_max"),
        r.Word<FirstStep>("first_step"), r.OptionalNumber("warp_cones_over_best"), r.OptionalNumber("bloat_cones_over_best"),
        r.OptionalNumber("slump_cones_over_best"), r.OptionalNumber("melt_cones_over_best"),
        r.OptionalNumber("bloat_cones_sooner_in_reduction"), r.Text("underfired"), r.Text("overfired"), r.OptionalText("shelf"),
        r.Word<HoldsWater>("holds_water"), r.Word<ThermalShock>("thermal_shock"), r.WordList("atmospheres", Atmospheres.OfFirings),
        r.OptionalText("colour_oxidation"), r.OptionalText("colour_reduction"), r.OptionalNumber("absorption_percent_min"),
        r.OptionalNumber("absorption_percent_max"), r.OptionalNumber("shrinkage_percent_min"),
        r.OptionalNumber("shrinkage_percent_max"), r.OptionalText("expansion_note"), r.OptionalText("use_note"),
        r.OptionalReferenceList("cautions", "cautions"), r.SourceList(), r.Confidence("range_confidence"), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    public static TypedTable<GlazeRow> Glazes { get; } = new("glazes", since: new(1, 2), keyFields: 1, r => new(
        r.Text("id"), r.Text("name"), r.Word<CoatKind>("kind"), r.Cone("cone_min"),
        r.OptionalCone("cone_best"), r.OptionalCone("cone_max"),
        r.WordList("atmospheres", Atmospheres.OfFirings), r.OptionalText("atmosphere_note"),
        r.Word<ReasonSeverity>("wrong_atmosphere"), r.OptionalText("wrong_atmosphere_effect"),
        r.OptionalReference("alternative", "glazes"), r.WordList<FiringKind>("fired_in"), r.WordList<PieceState>("applied_on"),
        r.OptionalText("applied_to_note"), r.Text("underfired"), r.OptionalText("overfired"), r.Word<RunRisk>("run_risk"),
        r.OptionalText("run_note"), r.OptionalWordList<Fume>("gives_off"), r.OptionalWordList<Fume>("spoiled_by"),
        r.Word<YesNo>("metallic"), r.Word<CoatFood>("food"), r.OptionalText("firings_note"), r.OptionalText("third_fire_note"),
        r.OptionalText("hazards_note"), r.OptionalReferenceList("cautions", "cautions"), r.SourceList(),
        r.Confidence("range_confidence"), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<DisagreementRow> Disagreements { get; } = new("disagreements", since: new(1, 2), keyFields: 1, r => new(
        r.Text("id"), r.Text("topic"), r.OptionalList("concerns"), r.Text("position_a"), r.Reference("source_a", "sources"),
        r.Text("position_b"), r.Reference("source_b", "sources"), r.OptionalText("comment"), r.Text("adopted"), r.SourceList(),
        r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<AbsorptionClassRow> AbsorptionClasses { get; } = new(
        "absorption-classes", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Text("standard"), r.Text("class"), r.OneOf("ware", "extruded", "dry-pressed", "whiteware"),
        r.OptionalNumber("percent_above"), r.OptionalNumber("percent_to"), r.Text("method"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    public static TypedTable<OxideExpansionRow> OxideExpansions { get; } = new(
        "oxide-expansions", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Text("oxide"), r.Text("name"), r.Integer("place"), r.OneOf("effect", "little", "lowers", "raises"),
        r.OptionalNumber("up_to_percent"), r.OptionalReference("fault_of_more", "faults"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    private static IReadOnlyList<TypedTable> Materials => [ClayBodies, Glazes, Disagreements, AbsorptionClasses, OxideExpansions];
}
