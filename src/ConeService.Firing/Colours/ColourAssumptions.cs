using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Colours;

/// <summary>Says what a question on colour left out, and what was taken instead.</summary>
internal static class ColourAssumptions
{
    public static IReadOnlyList<Assumption> Of(
        Recipe recipe, IReadOnlyList<(string Id, decimal? Percent)> additives, BaseGlazeRow? @base, Atmosphere? atmosphere,
        bool isBody)
    {
        var assumed = new List<Assumption>();
        if (recipe.Colorants.Count == 0)
            assumed.Add(new(isBody ? "/colorants" : "colorant", "every colorant", Message.Of("colours.every-colorant")));
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
        foreach (var (i, colorant) in recipe.Colorants.Index())
        {
            var weighed = colorant.Weighed;
            if (colorant.Percent is null) assumed.Add(new(Share(i), "none", Message.Of("colours.no-percent")));
            else if (weighed.Form is null) assumed.Add(new(Named(i), weighed.Colorant.Formula, Message.Of("colours.no-form")));
            if (weighed.Form is not { OxideFactor: not 1m } form) continue;
            assumed.Add(new(
                Named(i), FormattableString.Invariant($"factor {form.OxideFactor}"),
                Message.Of(
                    "colours.counted-as", ("form", form.Name), ("formula", weighed.Colorant.Formula), ("arithmetic", form.Arithmetic))));
        }

        assumed.AddRange(additives.Index().Where(a => a.Item.Percent is null)
            .Select(a => new Assumption($"/additives/{a.Index}/percent", "none", Message.Of("colours.no-additive-percent"))));
        return isBody ? [.. assumed.Select(a => a.InBody())] : assumed;

        // A query names one colorant, a body a list of them.
        string Share(int i) => isBody ? $"/colorants/{i}/percent" : "percent";
        string Named(int i) => isBody ? $"/colorants/{i}/colorant" : "colorant";
    }
}
