using System.Collections.Frozen;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Everything of the data package that a load is judged by, looked up once.</summary>
internal sealed class LoadTables
{
    private readonly FrozenDictionary<KilnHeat, KilnHeatRow> heats;
    private readonly FrozenDictionary<FiringKind, FiringNeeds> kinds;
    private readonly FrozenDictionary<string, LoadRuleRow> rules;
    private readonly FrozenDictionary<string, CautionRow> cautions;
    private readonly FrozenDictionary<string, decimal> mixUpCelsius;

    /// <summary>Looks everything up.</summary>
    public LoadTables(ConeCharts charts)
    {
        Dataset = charts.Dataset;
        Cones = charts.Scale;
        PotterScale = new(charts.Scale);
        Materials = new(Dataset, PotterScale);
        heats = Dataset.KilnHeats.ToFrozenDictionary(h => h.Id);
        kinds = Dataset.FiringKinds.ToFrozenDictionary(k => k.Id, k => new FiringNeeds(k, PotterScale));
        rules = Dataset.LoadRules.ToFrozenDictionary(r => r.Id, StringComparer.Ordinal);
        cautions = Dataset.Cautions.ToFrozenDictionary(c => c.Id, StringComparer.Ordinal);
        var describer = new ConeDescriber(charts);
        mixUpCelsius = charts.Scale.Cones
            .Where(c => PotterScale.Find(c) is not null)
            .Select(c => (Cone: c, describer.Describe(c).MixUp))
            .Where(x => x.MixUp is not null)
            .ToFrozenDictionary(x => x.Cone.ToString(), x => Math.Abs(x.MixUp!.CelsiusDifference), StringComparer.Ordinal);
    }

    /// <summary>
    /// What is missing from a package of loads: each heat of a kiln, each kind of firing, each rule that the check applies, each
    /// caution that it raises. A package of before the loads has none of these and is asked for nothing.
    /// </summary>
    public static IEnumerable<PackageFault> Requires(Dataset dataset)
    {
        const string By = "the load check";
        if (dataset is { KilnHeats.Count: 0, FiringKinds.Count: 0, LoadRules.Count: 0 }) return [];
        return
        [
            .. Requirements.Ids(dataset, "kiln-heats", EnumWords.All<KilnHeat>(), dataset.KilnHeats.Select(r => EnumWords.Word(r.Id)), By),
            .. Requirements.Ids(
                dataset, "firing-kinds", EnumWords.All<FiringKind>(), dataset.FiringKinds.Select(r => EnumWords.Word(r.Id)), By),
            .. Requirements.Ids(
                dataset, "load-rules", PieceJudge.RestsOn(dataset).Concat(LoadJudge.RestsOn),
                dataset.LoadRules.Select(r => r.Id), By),
            .. Requirements.Ids(dataset, "cautions", LoadCautionIds.All, dataset.Cautions.Select(r => r.Id), By),
        ];
    }

    /// <summary>The data package.</summary>
    public Dataset Dataset { get; }

    /// <summary>All cones, to read them with.</summary>
    public ConeScale Cones { get; }

    /// <summary>The cones to count with.</summary>
    public PotterScale PotterScale { get; }

    /// <summary>Bodies and coats.</summary>
    public KnownMaterials Materials { get; }

    /// <summary>What follows from what heats the kiln.</summary>
    public KilnHeatRow Heat(KilnHeat heat) => heats[heat];

    /// <summary>What a kind of firing needs.</summary>
    public FiringNeeds Kind(FiringKind kind) => kinds[kind];

    /// <summary>A load rule.</summary>
    public LoadRuleRow Rule(string id) => rules[id];

    /// <summary>The lower figure of a load rule.</summary>
    public decimal Figure(string id) => rules[id].ValueMin ?? 0;

    /// <summary>A caution.</summary>
    public CautionRow Caution(string id) => cautions[id];

    /// <summary>How far a cone and the one it is confused with are apart, °C; null where no chart prints both.</summary>
    public decimal? MixUpCelsius(PotterCone cone) => mixUpCelsius.TryGetValue(cone.Text, out var apart) ? apart : null;
}
