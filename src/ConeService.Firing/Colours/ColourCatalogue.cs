using System.Collections.Frozen;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Colours;

/// <summary>The colour tables of a data package, ready to be looked up by id and by other names. Immutable.</summary>
internal sealed class ColourCatalogue
{
    /// <summary>The base that stands for none in particular.</summary>
    public const string AnyBase = "any";

    // Bases that hold it are history: they answer who asks for them, and nobody else first.
    private const string Lead = "lead";

    /// <summary>What the answers on colour look up by name. A package from before the tables were there answers without them.</summary>
    public static IEnumerable<PackageFault> Requires(Dataset dataset)
    {
        if (dataset.BaseGlazes.Count > 0)
        {
            var present = dataset.BaseGlazes.Select(b => b.Id);
            foreach (var fault in Requirements.Ids(dataset, "base-glazes", [AnyBase], present, "a question that names no base"))
                yield return fault;
        }

        // A caution that no row gives would be left out of the answers without a word.
        if (dataset.Colorants.Count == 0) yield break;
        foreach (var word in ColourWarnings.AppliesTo.Except(dataset.Cautions.SelectMany(c => c.AppliesTo), StringComparer.Ordinal))
            yield return Requirements.Fault(dataset, "cautions", "applies_to", $"has no '{word}'; the warnings on colours need one");
    }

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
        ColorantNames = new(FindingCodes.ColorantUnknown, text => Message.Of("colours.unknown-colorant", ("sent", text)),
            data.Colorants.Select(c => (c.Id, new WeighedAs(c, null), c.Aliases.AsEnumerable()))
                .Concat(data.ColorantForms.Select(f => (f.Id, new WeighedAs(Colorants[f.Colorant], f), f.Aliases.AsEnumerable()))));
        BaseNames = new(FindingCodes.BaseUnknown, text => Message.Of("colours.unknown-base", ("sent", text)),
            data.BaseGlazes.Select(b => (b.Id, b, b.Aliases.AsEnumerable())));
        AdditiveNames = new(FindingCodes.AdditiveUnknown, text => Message.Of("colours.unknown-additive", ("sent", text)),
            data.Additives.Select(a => (a.Id, a.Id, a.Aliases.AsEnumerable()))
                .Concat(data.Colorants.Select(c => (c.Id, c.Id, c.Aliases.AsEnumerable()))));
        AtmosphereNames = new(FindingCodes.AtmosphereUnknown, text => Message.Of("colours.unknown-atmosphere", ("sent", text)),
            Atmospheres.OfColours.Select(a => (EnumWords.Word(a), a, Others(a))));
        KilnNames = new(FindingCodes.KilnUnknown, text => Message.Of("colours.unknown-kiln", ("sent", text)),
            EnumWords.All<KilnHeat>().Select(w => (w, EnumWords.Of<KilnHeat>(w), Enumerable.Empty<string>())));
        WordNames = new(FindingCodes.ColourUnknown, text => Message.Of("colours.unknown-word", ("sent", text)),
            data.ColourWords.Select(w => (w.Id, w.Id, w.Covers?.Split(", ") ?? Enumerable.Empty<string>())));
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

    internal Vocabulary<WeighedAs> ColorantNames { get; }

    internal Vocabulary<BaseGlazeRow> BaseNames { get; }

    internal Vocabulary<string> AdditiveNames { get; }

    internal Vocabulary<Atmosphere> AtmosphereNames { get; }

    internal Vocabulary<KilnHeat> KilnNames { get; }

    internal Vocabulary<string> WordNames { get; }

    /// <summary>Whether a base is told for what potters did once: a glaze melted with lead.</summary>
    internal bool IsHistoric(string @base) => Bases[@base].Contains.Contains(Lead);

    /// <summary>The cautions of an additive or colorant.</summary>
    internal IReadOnlyList<string> CautionsOf(string ingredient) =>
        Colorants.TryGetValue(ingredient, out var colorant)
            ? colorant.Cautions : Data.Additives.FirstOrDefault(a => a.Id == ingredient)?.Cautions ?? [];

    private static IEnumerable<string> Others(Atmosphere atmosphere) => atmosphere switch
    {
        Atmosphere.Oxidation => ["oxidising", "oxidizing", "oxidized", "oxidised"],
        Atmosphere.Reduction => ["reducing", "reduced"],
        Atmosphere.SaltSoda => ["salt", "soda", "vapour"],
        Atmosphere.PostFireReduction => ["raku", "smoke"],
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
