using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Colours;

/// <summary>A question on colour, read and checked.</summary>
/// <param name="Recipe">What is in the glaze, and how far it is fired.</param>
/// <param name="Additives">The additives as said.</param>
/// <param name="Atmosphere">The atmosphere; null where none was named.</param>
/// <param name="Kiln">The kiln; null where none was named.</param>
/// <param name="Word">The colour word that notes are filtered by.</param>
/// <param name="Assumed">What was left out.</param>
internal sealed record AskedColour(
    Recipe Recipe,
    IReadOnlyList<(string Id, decimal? Percent)> Additives,
    Atmosphere? Atmosphere,
    KilnHeat? Kiln,
    string? Word,
    IReadOnlyList<Assumption> Assumed)
{
    // Where nothing was named, whatever a template chooses by.
    private const string None = "none";

    /// <summary>The atmospheres to answer for.</summary>
    public IReadOnlyList<Atmosphere> Atmospheres => Atmosphere is { } one ? [one] : [Data.Atmosphere.Oxidation, Data.Atmosphere.Reduction];

    /// <summary>The question as it was understood.</summary>
    public ColourQuestion Question() => new(
        Sentence(),
        [.. Recipe.Colorants.Select(c => new AskedIngredient(c.Id, c.Weighed.Form?.Id, c.Percent, c.OxidePercent))],
        [.. Additives.Select(a => new AskedIngredient(a.Id, null, a.Percent, a.Percent))],
        Recipe.Base.Id,
        Atmospheres,
        Recipe.Heat?.Cone.ToString(),
        Recipe.Heat?.Celsius,
        Kiln,
        Word);

    private Message Sentence()
    {
        var named = Recipe.Colorants.Count > 0;
        return Message.Of(
            "colours.question",
            ("about", (named, Word) switch
            {
                (true, null) => "colorants",
                (true, _) => "notes",
                (false, null) => "colours",
                _ => "word",
            }),
            ("colorants", named ? Phrases.And(Recipe.Colorants.Select(c => Phrases.Amount(c.Weighed.Form?.Id ?? c.Id, c.Percent))) : null),
            ("word", Word),
            ("with", Additives.Count > 0 ? "additives" : None),
            ("additives", Additives.Count > 0 ? Phrases.And(Additives.Select(a => Phrases.Amount(a.Id, a.Percent))) : null),
            ("base", Recipe.Base.Id),
            ("cone", Recipe.Heat?.Cone.ToString() ?? None),
            ("atmosphere", Atmosphere is { } air ? EnumWords.Word(air) : "both"),
            ("kiln", Kiln is { } kiln ? EnumWords.Word(kiln) : None));
    }
}
