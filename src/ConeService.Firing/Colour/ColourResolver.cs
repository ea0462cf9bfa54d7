using ConeService.Contract.Colours;
using ConeService.Data;
using ConeService.Firing.Practice;

namespace ConeService.Firing.Colour;

/// <summary>Finds the colour of a recipe in an atmosphere.</summary>
/// <param name="catalogue">The colour tables.</param>
/// <param name="cautions">Links to cautions.</param>
internal sealed class ColourResolver(ColourCatalogue catalogue, CautionDescriber cautions)
{
    private readonly NoteRanking ranking = new(catalogue);
    private readonly RuleEngine rules = new(catalogue);
    private readonly ColourDecision decision = new(catalogue);
    private readonly ColourWarnings warnings = new(catalogue, cautions);
    private readonly ILookup<string, ColourNoteRow> notes = catalogue.Data.ColourNotes.ToLookup(n => n.Colorant);

    /// <summary>The colour of a recipe.</summary>
    public ResolvedColour Resolve(Recipe recipe, ColourAtmosphere atmosphere, KilnHeat? kiln)
    {
        var parts = recipe.Colorants.Select(c => Part(c.Weighed.Colorant, c.OxidePercent, recipe, atmosphere, null)).ToList();
        var interactions = rules.Evaluate(recipe, atmosphere);
        var verdict = decision.Decide(recipe, atmosphere, parts, interactions);
        return new(
            atmosphere,
            verdict.Basis != ColourBasis.NotCovered,
            verdict.Basis,
            verdict.Colour,
            verdict.Words,
            verdict.Swatch,
            verdict.Confidence,
            verdict.Explanation,
            verdict.RestsOn,
            parts,
            interactions,
            warnings.Of(interactions, atmosphere, kiln),
            [.. verdict.Sources.Concat(interactions.SelectMany(i => i.Sources)).Distinct()]);
    }

    /// <summary>The notes of a colour word, or of any, for the colorants asked for or for every one, without deciding one colour.</summary>
    public ResolvedColour List(Recipe recipe, ColourAtmosphere atmosphere, KilnHeat? kiln, string? word)
    {
        var parts = (recipe.Colorants.Count > 0 ? recipe.Colorants.Select(c => (Row: c.Weighed.Colorant, c.OxidePercent)) : catalogue.Data.Colorants.Select(c => (Row: c, OxidePercent: (decimal?)null)))
            .Select(c => Part(c.Row, c.OxidePercent, recipe, atmosphere, word)).Where(p => p.Covered || p.OnlyWith.Count > 0).ToList();
        var found = parts.Sum(p => p.Notes.Count);
        return new(
            atmosphere,
            found > 0,
            found > 0 ? ColourBasis.List : ColourBasis.NotCovered,
            null,
            word is null ? [] : [word],
            null,
            null,
            found > 0 ? $"{found} notes of {parts.Count(p => p.Covered)} colorants." : $"No source in this package covers this in {EnumWords.Word(atmosphere)}.",
            [],
            parts,
            [],
            warnings.Of([], atmosphere, kiln),
            [.. parts.SelectMany(p => p.Notes).SelectMany(n => n.Note.Sources).Distinct()]);
    }

    private ColorantColours Part(ColorantRow colorant, decimal? percent, Recipe recipe, ColourAtmosphere atmosphere, string? word)
    {
        var ranked = ranking.Rank(notes[colorant.Id].Where(n => word is null || n.ColourWords.Contains(word)), recipe, percent, atmosphere);
        var where = EnumWords.Word(atmosphere) + (recipe.Base.Id == ColourCatalogue.AnyBase ? "" : $" in a {recipe.Base.Id} base") + (recipe.Heat is { } heat ? $" at cone {heat.Cone}" : "");
        var statement = ranked.Notes is [var best, ..]
            ? $"{colorant.Name} in {where}: {best.Note.Colour}."
            : $"No source in this package covers {colorant.Name.ToLowerInvariant()} in {where}{(ranked.OnlyWith.Count > 0 ? " without what onlyWith names" : "")}{(ranked.RuledOut.Count > 0 ? "; ruledOut tells what the heat excludes" : "")}.";
        return new(colorant.Id, percent, ranked.Notes.Count > 0, statement, ranked.Notes, ranked.OnlyWith, ranked.RuledOut, ranked.Neighbours);
    }
}
