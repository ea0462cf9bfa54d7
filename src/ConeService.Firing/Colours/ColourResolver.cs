using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Practice;

namespace ConeService.Firing.Colours;

/// <summary>Finds the colour of a recipe in an atmosphere.</summary>
/// <param name="catalogue">The colour tables.</param>
/// <param name="cautions">Links to cautions.</param>
internal sealed class ColourResolver(ColourCatalogue catalogue, CautionIndex cautions)
{
    private readonly NoteRanking ranking = new(catalogue);
    private readonly RuleEngine rules = new(catalogue);
    private readonly ColourDecision decision = new(catalogue);
    private readonly ColourWarnings warnings = new(catalogue, cautions);
    private readonly ILookup<string, ColourNoteRow> notes = catalogue.Data.ColourNotes.ToLookup(n => n.Colorant);

    /// <summary>The colour of a recipe.</summary>
    public ResolvedColour Resolve(Recipe recipe, Atmosphere atmosphere, KilnHeat? kiln)
    {
        var alone = recipe.Colorants.Select(c => Alone(c.Weighed.Colorant, c.OxidePercent, recipe, atmosphere, null)).ToList();
        var interactions = rules.Evaluate(recipe, atmosphere);
        var verdict = decision.Decide(recipe, atmosphere, alone, interactions);
        return new(
            Atmosphere: atmosphere,
            Covered: verdict.Basis != ColourBasis.NotCovered,
            Basis: verdict.Basis,
            Colour: verdict.Colour,
            ColourWords: verdict.Words,
            Swatch: verdict.Swatch,
            Confidence: verdict.Confidence,
            Explanation: verdict.Explanation,
            RestsOn: verdict.RestsOn,
            Colorants: alone,
            Interactions: interactions,
            Warnings: warnings.Of(interactions, atmosphere, kiln),
            Sources: [.. verdict.Sources.Concat(interactions.SelectMany(i => i.Sources)).Distinct()]);
    }

    /// <summary>The notes of a colour word, or of any, for the colorants asked for or for every one, without deciding one colour.</summary>
    public ResolvedColour List(Recipe recipe, Atmosphere atmosphere, KilnHeat? kiln, string? word)
    {
        IEnumerable<(ColorantRow Row, decimal? OxidePercent)> asked = recipe.Colorants.Count > 0
            ? recipe.Colorants.Select(c => (c.Weighed.Colorant, c.OxidePercent))
            : catalogue.Data.Colorants.Select(c => (c, (decimal?)null));
        var alone = asked.Select(c => Alone(c.Row, c.OxidePercent, recipe, atmosphere, word))
            .Where(c => c.Covered || c.OnlyWith.Count > 0).ToList();
        var found = alone.Sum(c => c.ColourNotes.Count);
        return new(
            Atmosphere: atmosphere,
            Covered: found > 0,
            Basis: found > 0 ? ColourBasis.List : ColourBasis.NotCovered,
            Colour: null,
            ColourWords: word is null ? [] : [word],
            Swatch: null,
            Confidence: null,
            Explanation: found > 0
                ? Message.Of("colours.notes-found", ("notes", found), ("colorants", alone.Count(c => c.Covered)))
                : Message.Of("colours.nothing-found", ("atmosphere", EnumWords.Word(atmosphere))),
            RestsOn: [],
            Colorants: alone,
            Interactions: [],
            Warnings: warnings.Of([], atmosphere, kiln),
            Sources: [.. alone.SelectMany(c => c.ColourNotes).SelectMany(n => n.Note.Sources).Distinct()]);
    }

    private ColorantColours Alone(ColorantRow colorant, decimal? percent, Recipe recipe, Atmosphere atmosphere, string? word)
    {
        var told = notes[colorant.Id].Where(n => word is null || n.ColourWords.Contains(word));
        var ranked = ranking.Rank(told, recipe, percent, atmosphere);
        var air = EnumWords.Word(atmosphere);
        var cone = recipe.Heat?.Cone.ToString() ?? "none";
        var statement = ranked.Notes is [var historic, ..] && ranking.IsHistoric(historic.BaseMatch, historic.Note.Base)
            ? Message.Of("colours.only-historic", ("colorant", colorant.Name.ToLowerInvariant()), ("atmosphere", air))
            : ranked.Notes is [var best, ..]
            ? Message.Of(
                "colours.colorant-told", ("colorant", colorant.Name), ("atmosphere", air), ("base", recipe.Base.Id), ("cone", cone),
                ("colour", best.Note.Colour))
            : Message.Of(
                "colours.colorant-not-told", ("colorant", colorant.Name.ToLowerInvariant()), ("atmosphere", air), ("base", recipe.Base.Id),
                ("cone", cone), ("lacking", ranked.OnlyWith.Count > 0 ? "yes" : "no"), ("heat", ranked.RuledOut.Count > 0 ? "yes" : "no"));
        return new(
            colorant.Id, percent, ranked.Notes.Count > 0, statement, ranked.Notes, ranked.OnlyWith, ranked.RuledOut, ranked.Neighbours);
    }
}
