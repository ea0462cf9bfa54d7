namespace ConeService.Data;

/// <summary>The tables of colour.</summary>
internal static partial class TypedTables
{
    public static TypedTable<AdditiveRow> Additives { get; } = new(
        "additives", ["id"],
        [
            Column.Text("id"), Column.Text("name"), Column.Text("formula"), Column.OptionalList("aliases"), Column.Text("effect"),
            Column.OptionalReferenceList("cautions", "cautions"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("name"), r.Text("formula"), r.OptionalList("aliases"), r.Text("effect"), r.OptionalList("cautions"), r.List("source"),
            r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<BaseGlazeRow> BaseGlazes { get; } = new(
        "base-glazes", ["id"],
        [
            Column.Text("id"), Column.Text("name"), Column.Text("description"), Column.OptionalList("contains"), Column.OptionalReference("cone_min", "cones"),
            Column.OptionalReference("cone_max", "cones"), Column.OptionalList("aliases"), Column.OptionalReferenceList("cautions", "cautions"),
            Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("name"), r.Text("description"), r.OptionalList("contains"), r.OptionalText("cone_min"), r.OptionalText("cone_max"),
            r.OptionalList("aliases"), r.OptionalList("cautions"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ColorantRow> Colorants { get; } = new(
        "colorants", ["id"],
        [
            Column.Text("id"), Column.Text("name"), Column.Text("formula"), Column.Word<ColorantKind>("kind"), Column.Word<HazardLevel>("hazard"),
            Column.Text("hazard_note"), Column.ReferenceList("cautions", "cautions"), Column.OptionalReferenceList("contains", "colorants"),
            Column.OptionalList("aliases"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("name"), r.Text("formula"), r.Word<ColorantKind>("kind"), r.Word<HazardLevel>("hazard"), r.Text("hazard_note"),
            r.List("cautions"), r.OptionalList("contains"), r.OptionalList("aliases"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ColorantFormRow> ColorantForms { get; } = new(
        "colorant-forms", ["id"],
        [
            Column.Text("id"), Column.Reference("colorant", "colorants"), Column.Text("name"), Column.Text("formula"), Column.Number("oxide_factor"),
            Column.Text("arithmetic"), Column.OptionalList("aliases"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("colorant"), r.Text("name"), r.Text("formula"), r.Number("oxide_factor"), r.Text("arithmetic"), r.OptionalList("aliases"),
            r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<TemperatureLimitRow> TemperatureLimits { get; } = new(
        "temperature-limits", ["id"],
        [
            Column.Text("id"), Column.Reference("colorant", "colorants"), Column.Word<TemperatureLimitKind>("kind"), Column.OptionalReference("cone_low", "cones"),
            Column.OptionalReference("cone_high", "cones"), Column.OptionalNumber("celsius_low"), Column.OptionalNumber("celsius_high"), Column.Text("effect"),
            Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("colorant"), r.Word<TemperatureLimitKind>("kind"), r.OptionalText("cone_low"), r.OptionalText("cone_high"),
            r.OptionalNumber("celsius_low"), r.OptionalNumber("celsius_high"), r.Text("effect"), r.List("source"), r.Confidence("confidence"),
            r.OptionalText("note")));

    public static TypedTable<ColourNoteRow> ColourNotes { get; } = new(
        "colour-notes", ["id"],
        [
            Column.Text("id"), Column.Reference("colorant", "colorants"), Column.Reference("base", "base-glazes"), Column.OptionalText("base_detail"),
            Column.Word<ColourAtmosphere>("atmosphere"), Column.Word<SeenOn>("seen_on"), Column.OptionalNumber("percent_min"),
            Column.OptionalNumber("percent_max"), Column.OptionalReference("percent_form", "colorant-forms"),
            Column.OptionalWord<Confidence>("percent_confidence"), Column.Text("colour"), Column.ReferenceList("colour_words", "colour-words"),
            Column.Text("swatch"), Column.OptionalText("condition"), Column.OptionalList("needs"), Column.OptionalReferenceList("limits", "temperature-limits"),
            Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("colorant"), r.Text("base"), r.OptionalText("base_detail"), r.Word<ColourAtmosphere>("atmosphere"), r.Word<SeenOn>("seen_on"),
            r.OptionalNumber("percent_min"), r.OptionalNumber("percent_max"), r.OptionalText("percent_form"), r.OptionalWord<Confidence>("percent_confidence"),
            r.Text("colour"), r.List("colour_words"), r.Text("swatch"), r.OptionalText("condition"), r.OptionalList("needs"), r.OptionalList("limits"),
            r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ColourWordRow> ColourWords { get; } = new(
        "colour-words", ["id"],
        [
            Column.Text("id"), Column.Word<ColourWordKind>("kind"), Column.OptionalText("covers"), Column.SourceList(), Column.Confidence(),
            Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Word<ColourWordKind>("kind"), r.OptionalText("covers"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ColourRuleRow> ColourRules { get; } = new(
        "colour-rules", ["id"],
        [
            Column.Text("id"), Column.Text("rule"), Column.Word<ColourRuleEffect>("effect"), Column.Text("outcome"),
            Column.OptionalReferenceList("colour_words", "colour-words"), Column.OptionalText("reason"), Column.OptionalText("figures"),
            Column.OptionalWordList<ColourAtmosphere>("atmospheres"), Column.OptionalReferenceList("bases", "base-glazes"),
            Column.OptionalReference("limit", "temperature-limits"), Column.OptionalReferenceList("shown_by", "colour-notes"),
            Column.OptionalReferenceList("cautions", "cautions"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("rule"), r.Word<ColourRuleEffect>("effect"), r.Text("outcome"), r.OptionalList("colour_words"), r.OptionalText("reason"),
            r.OptionalText("figures"), r.Words<ColourAtmosphere>("atmospheres"), r.OptionalList("bases"), r.OptionalText("limit"), r.OptionalList("shown_by"),
            r.OptionalList("cautions"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ColourRuleIngredientRow> ColourRuleIngredients { get; } = new(
        "colour-rule-ingredients", ["rule", "ingredient"],
        [
            Column.Reference("rule", "colour-rules"), Column.Text("ingredient"), Column.Word<IngredientRole>("role"), Column.OptionalNumber("percent_min"),
            Column.OptionalNumber("percent_max"), Column.OptionalWord<Confidence>("percent_confidence"), Column.SourceList(), Column.Confidence(),
            Column.OptionalText("note"),
        ],
        r => new(
            r.Text("rule"), r.Text("ingredient"), r.Word<IngredientRole>("role"), r.OptionalNumber("percent_min"), r.OptionalNumber("percent_max"),
            r.OptionalWord<Confidence>("percent_confidence"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    private static IReadOnlyList<TypedTable> Colour =>
    [
        Additives, BaseGlazes, Colorants, ColorantForms, TemperatureLimits, ColourNotes, ColourWords, ColourRules, ColourRuleIngredients,
    ];
}
