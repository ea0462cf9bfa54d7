using System.Collections.Frozen;
using ConeService.Contract.Cones;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Everything of the data package that a load is judged by, looked up once.</summary>
internal sealed class LoadBook
{
    private readonly FrozenDictionary<KilnHeat, KilnHeatRow> heats;
    private readonly FrozenDictionary<FiringKind, KindNeeds> kinds;
    private readonly FrozenDictionary<string, LoadRuleRow> rules;
    private readonly FrozenDictionary<string, CautionRow> cautions;
    private readonly FrozenDictionary<string, decimal> mixUpCelsius;

    /// <summary>Looks everything up.</summary>
    public LoadBook(ConeCharts charts)
    {
        Dataset = charts.Dataset;
        Scale = charts.Scale;
        Marks = new(charts.Scale);
        Shelf = new(Dataset, Marks);
        heats = Dataset.KilnHeats.ToFrozenDictionary(h => h.Id);
        kinds = Dataset.FiringKinds.ToFrozenDictionary(k => k.Id, k => new KindNeeds(k, Marks));
        rules = Dataset.LoadRules.ToFrozenDictionary(r => r.Id, StringComparer.Ordinal);
        cautions = Dataset.Cautions.ToFrozenDictionary(c => c.Id, StringComparer.Ordinal);
        var describer = new ConeDescriber(charts);
        mixUpCelsius = charts.Scale.Cones.Where(c => Marks.Find(c) is not null).Select(c => (Cone: c, describer.Describe(c).MixUp))
            .Where(x => x.MixUp is not null).ToFrozenDictionary(x => x.Cone.ToString(), x => Math.Abs(x.MixUp!.CelsiusApart), StringComparer.Ordinal);
    }

    /// <summary>The data package.</summary>
    public Dataset Dataset { get; }

    /// <summary>The scale, to read cones with.</summary>
    public ConeScale Scale { get; }

    /// <summary>The cones to count with.</summary>
    public ConeMarks Marks { get; }

    /// <summary>Bodies and coats.</summary>
    public MaterialShelf Shelf { get; }

    /// <summary>What follows from what heats the kiln.</summary>
    public KilnHeatRow Heat(KilnHeat heat) => heats[heat];

    /// <summary>What a kind of firing needs.</summary>
    public KindNeeds Kind(FiringKind kind) => kinds[kind];

    /// <summary>A load rule.</summary>
    public LoadRuleRow Rule(string id) => rules[id];

    /// <summary>The lower figure of a load rule.</summary>
    public decimal Figure(string id) => rules[id].ValueMin ?? 0;

    /// <summary>A caution.</summary>
    public CautionRow Caution(string id) => cautions[id];

    /// <summary>How far a cone and the one it is confused with are apart, °C; null where no chart prints both.</summary>
    public decimal? MixUpCelsius(ConeMark cone) => mixUpCelsius.TryGetValue(cone.Text, out var apart) ? apart : null;
}

/// <summary>What a kind of firing needs, ready to be asked.</summary>
internal sealed class KindNeeds
{
    internal KindNeeds(FiringKindRow row, ConeMarks marks)
    {
        Row = row;
        Heats = new(row.KilnHeats);
        Atmospheres = new(row.Atmospheres);
        Takes = new(row.Takes);
        Min = marks.Of(row.ConeMin);
        Max = marks.Of(row.ConeMax);
    }

    /// <summary>The row of the data package.</summary>
    public FiringKindRow Row { get; }

    /// <summary>Its name with the article: a bisque firing, an overglaze firing.</summary>
    public string AName => Sentences.WithArticle(Row.Name);

    /// <summary>Kilns it is fired in.</summary>
    public WordSet<KilnHeat> Heats { get; }

    /// <summary>Atmospheres it is fired in.</summary>
    public WordSet<Atmosphere> Atmospheres { get; }

    /// <summary>States of the ware it takes.</summary>
    public WordSet<PieceState> Takes { get; }

    /// <summary>Lowest cone.</summary>
    public ConeMark Min { get; }

    /// <summary>Highest cone.</summary>
    public ConeMark Max { get; }
}
