using System.Collections.Frozen;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Colour;

/// <summary>The colour tables of a data package, ready to be looked up by id and by other names. Immutable.</summary>
internal sealed class ColourCatalogue
{
    /// <summary>The base that stands for none in particular.</summary>
    public const string AnyBase = "any";

    /// <summary>Indexes the colour tables.</summary>
    public ColourCatalogue(ConeCharts charts)
    {
        Charts = charts;
        var data = Data = charts.Dataset;
        Colorants = data.Colorants.ToFrozenDictionary(c => c.Id);
        Forms = data.ColorantForms.ToFrozenDictionary(f => f.Id);
        Bases = data.BaseGlazes.ToFrozenDictionary(b => b.Id);
        Limits = data.TemperatureLimits.ToFrozenDictionary(l => l.Id);
        Notes = data.ColourNotes.ToFrozenDictionary(n => n.Id);
        IngredientsOfRule = data.ColourRuleIngredients.ToLookup(i => i.Rule);
        ColorantNames = new("colorant-unknown", "colorant",
            data.Colorants.Select(c => (c.Id, new WeighedAs(c, null), c.Aliases.AsEnumerable()))
                .Concat(data.ColorantForms.Select(f => (f.Id, new WeighedAs(Colorants[f.Colorant], f), f.Aliases.AsEnumerable()))));
        BaseNames = new("base-unknown", "base glaze", data.BaseGlazes.Select(b => (b.Id, b, b.Aliases.AsEnumerable())));
        AdditiveNames = new("additive-unknown", "additive or colorant",
            data.Additives.Select(a => (a.Id, a.Id, a.Aliases.AsEnumerable())).Concat(data.Colorants.Select(c => (c.Id, c.Id, c.Aliases.AsEnumerable()))));
        AtmosphereNames = new("atmosphere-unknown", "atmosphere", EnumWords.All<ColourAtmosphere>().Where(w => w != "any").Select(w => (w, EnumWords.Of<ColourAtmosphere>(w), Others(w))));
        KilnNames = new("kiln-unknown", "kiln", EnumWords.All<KilnHeat>().Select(w => (w, EnumWords.Of<KilnHeat>(w), Enumerable.Empty<string>())));
        WordNames = new("colour-unknown", "colour word", data.ColourWords.Select(w => (w.Id, w.Id, w.Covers?.Split(", ") ?? Enumerable.Empty<string>())));
    }

    /// <summary>The charts, for cones as temperatures.</summary>
    public ConeCharts Charts { get; }

    /// <summary>The data package.</summary>
    public Dataset Data { get; }

    internal FrozenDictionary<string, ColorantRow> Colorants { get; }

    internal FrozenDictionary<string, ColorantFormRow> Forms { get; }

    internal FrozenDictionary<string, BaseGlazeRow> Bases { get; }

    internal FrozenDictionary<string, TemperatureLimitRow> Limits { get; }

    internal FrozenDictionary<string, ColourNoteRow> Notes { get; }

    internal ILookup<string, ColourRuleIngredientRow> IngredientsOfRule { get; }

    internal ColourNames<WeighedAs> ColorantNames { get; }

    internal ColourNames<BaseGlazeRow> BaseNames { get; }

    internal ColourNames<string> AdditiveNames { get; }

    internal ColourNames<ColourAtmosphere> AtmosphereNames { get; }

    internal ColourNames<KilnHeat> KilnNames { get; }

    internal ColourNames<string> WordNames { get; }

    /// <summary>The cautions of an additive or colorant.</summary>
    internal IReadOnlyList<string> CautionsOf(string ingredient) =>
        Colorants.TryGetValue(ingredient, out var colorant) ? colorant.Cautions : Data.Additives.FirstOrDefault(a => a.Id == ingredient)?.Cautions ?? [];

    private static IEnumerable<string> Others(string word) => word switch
    {
        "oxidation" => ["oxidising", "oxidizing", "oxidized", "oxidised"],
        "reduction" => ["reducing", "reduced"],
        "salt-soda" => ["salt", "soda", "vapour"],
        "post-fire-reduction" => ["raku", "smoke"],
        _ => [],
    };
}

/// <summary>A colorant and the form in which it is weighed; no form is the colorant's own formula.</summary>
/// <param name="Colorant">The colorant.</param>
/// <param name="Form">The form; null where none was named.</param>
internal sealed record WeighedAs(ColorantRow Colorant, ColorantFormRow? Form)
{
    /// <summary>Percentage of the counted oxide in a percentage of the form.</summary>
    public decimal? Oxide(decimal? percent) => percent * (Form?.OxideFactor ?? 1m);
}
