using ConeService.Contract.Answers;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Colour;

/// <summary>Says what a question on colour left out, and what was taken instead.</summary>
internal static class ColourAssumptions
{
    public static IReadOnlyList<Assumption> Of(Recipe recipe, IReadOnlyList<(string Id, decimal? Percent)> additives, BaseGlazeRow? @base, ColourAtmosphere? atmosphere)
    {
        var assumed = new List<Assumption>();
        if (recipe.Colorants.Count == 0) assumed.Add(new("colorant", "every colorant", "No colorant was named; all that are told are listed."));
        if (@base is null) assumed.Add(new("base", ColourCatalogue.AnyBase, "No base was named; notes of every base are told, those for any base first."));
        if (atmosphere is null) assumed.Add(new("atmosphere", "oxidation and reduction", "No atmosphere was named; both are told side by side."));
        assumed.Add(recipe.Heat switch
        {
            null => new("cone", "none", "No cone was named; what depends on heat is told as possible, and no colour is ruled out by it."),
            { Celsius: null } heat => new("temperature", "none", $"Chart {ConeCharts.DefaultChart} does not print cone {heat.Cone}; what is told in °C is not decided."),
            { Celsius: { } celsius } heat => new("temperature", FormattableString.Invariant($"{celsius:0.#} °C"), $"Cone {heat.Cone} is taken at its end point on {ConeCharts.DefaultChart} at 60 °C/h."),
        });
        foreach (var part in recipe.Colorants)
        {
            if (part.Percent is null) assumed.Add(new($"percent of {part.Id}", "none", "No percentage was given; notes of every percentage are told."));
            else if (part.Weighed.Form is null) assumed.Add(new($"form of {part.Id}", part.Weighed.Colorant.Formula, "No form was named; the percentage counts this one."));
            if (part.Weighed.Form is { OxideFactor: not 1m } form)
                assumed.Add(new($"oxide of {part.Id}", FormattableString.Invariant($"factor {form.OxideFactor}"), $"{form.Name} counted as {part.Weighed.Colorant.Formula}: {form.Arithmetic}."));
        }

        assumed.AddRange(additives.Where(a => a.Percent is null).Select(a => new Assumption($"percent of {a.Id}", "none", "No percentage was given; rules on its amount are told as possible.")));
        return assumed;
    }
}
