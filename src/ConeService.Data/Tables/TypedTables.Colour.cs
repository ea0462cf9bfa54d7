namespace ConeService.Data;

/// <summary>The tables of colour.</summary>
internal static partial class TypedTables
{
    public static TypedTable<AdditiveRow> Additives { get; } = new("additives", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Text("name"), r.Text("formula"), r.OptionalList("aliases"), r.Text("effect"),
        r.OptionalReferenceList("cautions", "cautions"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<BaseGlazeRow> BaseGlazes { get; } = new("base-glazes", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Text("name"), r.Text("description"), r.OptionalList("contains"),
        r.OptionalCone("cone_min"), r.OptionalCone("cone_max"), r.OptionalList("aliases"),
        r.OptionalReferenceList("cautions", "cautions"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ColorantRow> Colorants { get; } = new("colorants", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Text("name"), r.Text("formula"), r.Word<ColorantKind>("kind"), r.Word<HazardLevel>("hazard"),
        r.Text("hazard_note"), r.ReferenceList("cautions", "cautions"), r.OptionalReferenceList("contains", "colorants"),
        r.OptionalList("aliases"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ColorantFormRow> ColorantForms { get; } = new("colorant-forms", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Reference("colorant", "colorants"), r.Text("name"), r.Text("formula"), r.Number("oxide_factor"),
        r.Text("arithmetic"), r.OptionalList("aliases"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<TemperatureLimitRow> TemperatureLimits { get; } = new(
        "temperature-limits", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Reference("colorant", "colorants"), r.Word<TemperatureLimitKind>("kind"),
        r.OptionalCone("cone_low"), r.OptionalCone("cone_high"), r.OptionalNumber("celsius_low"),
        r.OptionalNumber("celsius_high"), r.Text("effect"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ColourNoteRow> ColourNotes { get; } = new("colour-notes", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Reference("colorant", "colorants"), r.Reference("base", "base-glazes"), r.OptionalText("base_detail"),
        r.Word("atmosphere", Atmospheres.OfColourNotes), r.Word<SeenOn>("seen_on"), r.OptionalNumber("percent_min"),
        r.OptionalNumber("percent_max"), r.OptionalReference("percent_form", "colorant-forms"),
        r.OptionalWord<Confidence>("percent_confidence"), r.Text("colour"), r.ReferenceList("colour_words", "colour-words"),
        r.Text("swatch"), r.OptionalText("condition"), r.OptionalList("needs"),
        r.OptionalReferenceList("limits", "temperature-limits"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ColourWordRow> ColourWords { get; } = new("colour-words", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Word<ColourWordKind>("kind"), r.OptionalText("covers"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ColourRuleRow> ColourRules { get; } = new("colour-rules", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Text("rule"), r.Word<ColourRuleEffect>("effect"), r.Text("outcome"),
        r.OptionalReferenceList("colour_words", "colour-words"), r.OptionalText("reason"), r.OptionalText("figures"),
        r.OptionalWordList("atmospheres", Atmospheres.OfColours), r.OptionalReferenceList("bases", "base-glazes"),
        r.OptionalReference("limit", "temperature-limits"), r.OptionalReferenceList("shown_by", "colour-notes"),
        r.OptionalReferenceList("cautions", "cautions"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ColourRuleIngredientRow> ColourRuleIngredients { get; } = new(
        "colour-rule-ingredients", since: new(1, 3), keyFields: 2, r => new(
        r.Reference("rule", "colour-rules"), r.Text("ingredient"), r.Word<IngredientRole>("role"),
        r.OptionalNumber("percent_min"), r.OptionalNumber("percent_max"), r.OptionalWord<Confidence>("percent_confidence"),
        r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    private static IReadOnlyList<TypedTable> Colour =>
    [
        Additives, BaseGlazes, Colorants, ColorantForms, TemperatureLimits, ColourNotes, ColourWords, ColourRules, ColourRuleIngredients,
    ];
}
