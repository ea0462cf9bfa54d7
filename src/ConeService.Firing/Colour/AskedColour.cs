using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Data;

namespace ConeService.Firing.Colour;

/// <summary>A question on colour, read and checked.</summary>
/// <param name="Recipe">What is in the glaze, and how far it is fired.</param>
/// <param name="Additives">The additives as said.</param>
/// <param name="Atmosphere">The atmosphere; null where none was named.</param>
/// <param name="Kiln">The kiln; null where none was named.</param>
/// <param name="Word">The colour word that notes are filtered by.</param>
/// <param name="Assumed">What was left out.</param>
internal sealed record AskedColour(
    Recipe Recipe, IReadOnlyList<(string Id, decimal? Percent)> Additives, ColourAtmosphere? Atmosphere, KilnHeat? Kiln, string? Word, IReadOnlyList<Assumption> Assumed)
{
    /// <summary>The atmospheres to answer for.</summary>
    public IReadOnlyList<ColourAtmosphere> Atmospheres => Atmosphere is { } one ? [one] : [ColourAtmosphere.Oxidation, ColourAtmosphere.Reduction];

    /// <summary>The question as it was understood.</summary>
    public ColourQuestion Question(IReadOnlyList<ColourAtmosphere> atmospheres) => new(
        Sentence(atmospheres),
        [.. Recipe.Colorants.Select(c => new AskedIngredient(c.Id, c.Weighed.Form?.Id, c.Percent, c.OxidePercent))],
        [.. Additives.Select(a => new AskedIngredient(a.Id, null, a.Percent, a.Percent))],
        Recipe.Base.Id,
        atmospheres,
        Recipe.Heat?.Cone.ToString(),
        Recipe.Heat?.Celsius,
        Kiln,
        Word);

    private string Sentence(IReadOnlyList<ColourAtmosphere> atmospheres)
    {
        var what = Recipe.Colorants.Count > 0
            ? $"Which colour gives {string.Join(" and ", Recipe.Colorants.Select(c => Say(c.Weighed.Form?.Id ?? c.Id, c.Percent)))}"
            : Word is null ? "Which colours are told" : $"What gives {Word}";
        var with = Additives.Count > 0 ? $" with {string.Join(" and ", Additives.Select(a => Say(a.Id, a.Percent)))}" : "";
        var only = Recipe.Colorants.Count > 0 && Word is not null ? $", of notes that hold {Word}," : "";
        return $"{what}{with}{only} in {(Recipe.Base.Id == ColourCatalogue.AnyBase ? "any base" : $"the base {Recipe.Base.Id}")}"
            + (Recipe.Heat is { } heat ? $" at cone {heat.Cone}" : " at no cone in particular")
            + $", in {string.Join(" and in ", atmospheres.Select(EnumWords.Word))}{(Kiln is { } kiln ? $"; kiln: {EnumWords.Word(kiln)}" : "")}?";
    }

    private static string Say(string id, decimal? percent) => id + (percent is { } p ? string.Create(CultureInfo.InvariantCulture, $" {p:0.###} %") : "");
}
