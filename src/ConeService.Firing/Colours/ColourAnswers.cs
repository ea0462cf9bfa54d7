using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Colours;

/// <summary>Rows of the colour tables as answers.</summary>
internal static class ColourAnswers
{
    // The factor of a form has three digits; more would be noise.
    private const int OxideDigits = 3;

    public static Colorant Of(ColorantRow row, Dataset data) => new(
        Id: row.Id,
        Name: row.Name,
        Formula: row.Formula,
        ColorantKind: row.Kind,
        Hazard: row.Hazard,
        HazardNote: row.HazardNote,
        Cautions: row.Cautions,
        Contains: row.Contains,
        Aliases: row.Aliases,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note,
        Student: Message.ToStudents(data, "colorants", row.Id));

    public static ColorantForm Of(ColorantFormRow row) => new(
        Id: row.Id,
        Colorant: row.Colorant,
        Name: row.Name,
        Formula: row.Formula,
        OxideFactor: row.OxideFactor,
        Arithmetic: row.Arithmetic,
        Aliases: row.Aliases,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note);

    public static Additive Of(AdditiveRow row) => new(
        Id: row.Id,
        Name: row.Name,
        Formula: row.Formula,
        Aliases: row.Aliases,
        Effect: row.Effect,
        Cautions: row.Cautions,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note);

    public static BaseGlaze Of(BaseGlazeRow row) => new(
        Id: row.Id,
        Name: row.Name,
        Description: row.Description,
        Contains: row.Contains,
        ConeMin: row.ConeMin,
        ConeMax: row.ConeMax,
        Aliases: row.Aliases,
        Cautions: row.Cautions,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note);

    public static ColourWord Of(ColourWordRow row) => new(row.Id, row.Kind, row.Covers, row.Sources, row.Confidence, row.Note);

    public static TemperatureLimit Of(TemperatureLimitRow row) => new(
        Id: row.Id,
        Colorant: row.Colorant,
        TemperatureLimitKind: row.Kind,
        ConeMin: row.ConeLow,
        ConeMax: row.ConeHigh,
        CelsiusMin: row.CelsiusLow,
        CelsiusMax: row.CelsiusHigh,
        Effect: row.Effect,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note);

    /// <summary>A rule with its ingredients.</summary>
    public static ColourRule Of(ColourRuleRow row, IEnumerable<ColourRuleIngredientRow> ingredients) => new(
        new(
            Id: row.Id,
            Rule: row.Rule,
            Effect: row.Effect,
            Outcome: row.Outcome,
            ColourWords: row.ColourWords,
            Reason: row.Reason,
            Figures: row.Figures,
            Atmospheres: row.Atmospheres,
            Bases: row.Bases,
            Limit: row.Limit,
            ShownBy: row.ShownBy,
            Cautions: row.Cautions,
            Sources: row.Sources,
            Confidence: row.Confidence,
            Note: row.Note),
        [.. ingredients.Select(Of)]);

    /// <summary>A note, with its percentage as the counted oxide.</summary>
    public static ColourNote Of(ColourNoteRow row, ColourCatalogue catalogue) => new(
        Id: row.Id,
        Colorant: row.Colorant,
        Base: row.Base,
        BaseDetail: row.BaseDetail,
        Atmosphere: row.Atmosphere,
        SeenOn: row.SeenOn,
        Percent: Percent(row, catalogue),
        Colour: row.Colour,
        ColourWords: row.ColourWords,
        Swatch: new(row.Swatch, Confidence.Estimate),
        Condition: row.Condition,
        Needs: row.Needs,
        TemperatureLimits: row.Limits,
        Sources: row.Sources,
        Confidence: row.ColourConfidence,
        Note: row.Note,
        Student: Message.ToStudents(catalogue.Data, "colour-notes", row.Id));

    /// <summary>The told percentage; null where none is told.</summary>
    public static ToldPercent? Percent(ColourNoteRow row, ColourCatalogue catalogue)
    {
        if (row.PercentMin is not { } min || row.PercentMax is not { } max) return null;
        var form = row.PercentForm is { } id ? catalogue.Forms[id] : null;
        var factor = form?.OxideFactor ?? 1m;
        return new(
            Min: min,
            Max: max,
            Form: form is null ? catalogue.Colorants[row.Colorant].Formula : $"{form.Name} ({form.Formula})",
            FormStated: form is not null,
            OxideMin: Math.Round(min * factor, OxideDigits),
            OxideMax: Math.Round(max * factor, OxideDigits),
            Sourced: row.PercentConfidence is Confidence.Published or Confidence.Corroborated,
            Confidence: row.PercentConfidence!.Value);
    }

    private static ColourRuleIngredient Of(ColourRuleIngredientRow row) => new(
        Rule: row.Rule,
        Ingredient: row.Ingredient,
        Role: row.Role,
        PercentMin: row.PercentMin,
        PercentMax: row.PercentMax,
        PercentConfidence: row.PercentConfidence,
        Sources: row.Sources,
        Confidence: row.Evidence?.Of("role", row.Confidence) ?? row.Confidence,
        Note: row.Note);
}
