using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Colours;

/// <summary>Says what a question on colour left out, and what was taken instead.</summary>
internal static class ColourAssumptions
{
    public static IReadOnlyList<Assumption> Of(
        Recipe recipe, IReadOnlyList<(string Id, decimal? Percent)> additives, BaseGlazeRow? @base, Atmosphere? atmosphere)
    {
        var assumed = new List<Assumption>();
        if (recipe.Colorants.Count == 0) assumed.Add(new("colorant", "every colorant", Message.Of("colours.every-colorant")));
        if (@base is null) assumed.Add(new("base", ColourCatalogue.AnyBase, Message.Of("colours.every-base")));
        if (atmosphere is null) assumed.Add(new("atmosphere", "oxidation and reduction", Message.Of("colours.both-atmospheres")));
        assumed.Add(recipe.Heat switch
        {
            null => new("cone", "none", Message.Of("colours.no-cone")),
            { Celsius: null } heat => new(
                "temperature", "none",
                Message.Of("colours.cone-not-printed", ("chart", ConeCharts.DefaultChart), ("cone", heat.Cone.ToString()))),
            { Celsius: { } celsius } heat => new(
                "temperature", FormattableString.Invariant($"{celsius:0.#} °C"),
                Message.Of("colours.cone-end-point", ("cone", heat.Cone.ToString()), ("chart", ConeCharts.DefaultChart))),
        });
        foreach (var colorant in recipe.Colorants)
        {
            var (id, weighed) = (colorant.Id, colorant.Weighed);
            if (colorant.Percent is null) assumed.Add(new($"percent of {id}", "none", Message.Of("colours.no-percent")));
            else if (weighed.Form is null) assumed.Add(new($"form of {id}", weighed.Colorant.Formula, Message.Of("colours.no-form")));
            if (weighed.Form is not { OxideFactor: not 1m } form) continue;
            assumed.Add(new(
                $"oxide of {id}", FormattableString.Invariant($"factor {form.OxideFactor}"),
                Message.Of(
                    "colours.counted-as", ("form", form.Name), ("formula", weighed.Colorant.Formula), ("arithmetic", form.Arithmetic))));
        }

        assumed.AddRange(additives.Where(a => a.Percent is null)
            .Select(a => new Assumption($"percent of {a.Id}", "none", Message.Of("colours.no-additive-percent"))));
        return assumed;
    }
}
