using System.Collections.Concurrent;
using System.Collections.Frozen;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Loads.Reading;
using ConeService.Firing.Loads.Suggesting;
using ConeService.Firing.Materials;
using ConeService.Firing.Room;

namespace ConeService.Firing.Loads;

/// <summary>Everything of the data package that a load is judged by, looked up once.</summary>
internal sealed class LoadTables
{
    private readonly FrozenDictionary<KilnHeat, KilnHeatRow> heats;
    private readonly FrozenDictionary<FiringKind, FiringNeeds> kinds;
    private readonly FrozenDictionary<string, LoadRuleRow> rules;
    private readonly FrozenDictionary<string, CautionRow> cautions;
    private readonly FrozenDictionary<string, decimal> mixUpCelsius;
    private readonly ConcurrentDictionary<(string Rule, string Material, bool IsBody), IReadOnlyList<string>> sources = new();
    private readonly FrozenDictionary<string, (decimal Slowest, decimal Usual)> endPoints;
    private readonly Lazy<FiringMenu> menu;
    private readonly HashSet<(FiringKind Kind, int Order, Atmosphere Atmosphere)> usual;

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
        usual = [.. Dataset.UsualFirings.SelectMany(f => f.Atmospheres.Select(a => (f.FiringKind, PotterScale.Of(f.Cone).Order, a)))];
        TradeWords = new(Dataset.TradeWords);
        RoomFactors = RoomFactors.Of(Dataset);
        menu = new(() => FiringMenu.Usual(this));
        var usualRate = charts.Default.DefaultRate?.CelsiusPerHour;
        endPoints = charts.Default.Cones
            .Where(c => PotterScale.Find(c.Cone) is not null && c.Cells.Count > 0)
            .ToFrozenDictionary(
                c => c.Cone.ToString(),
                c => (c.Cells.Min(x => x.Celsius),
                    c.Cells.FirstOrDefault(x => x.RateCelsiusPerHour == usualRate)?.Celsius ?? c.Cells.Max(x => x.Celsius)),
                StringComparer.Ordinal);
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
                dataset, "load-rules", PieceJudge.RestsOn(dataset).Concat(LoadJudge.RestsOn).Concat(LoadJudge.RestsOnLater(dataset))
                    .Concat(LoadRoom.RestsOn(dataset)),
                dataset.LoadRules.Select(r => r.Id), By),
            .. Requirements.Ids(dataset, "cautions", LoadCautionIds.All, dataset.Cautions.Select(r => r.Id), By),
        ];
    }

    /// <summary>The data package.</summary>
    public Dataset Dataset { get; }

    /// <summary>Figures of the model of room; null in packages of before 1.7.</summary>
    public RoomFactors? RoomFactors { get; }

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

    /// <summary>Words of the trade.</summary>
    public TradeWords TradeWords { get; }

    /// <summary>A load rule that older packages lack; null in those.</summary>
    public LoadRuleRow? FindRule(string id) => rules.GetValueOrDefault(id);

    /// <summary>The lower figure of a load rule.</summary>
    public decimal Figure(string id) => rules[id].ValueMin ?? 0;

    /// <summary>Every firing to a whole cone in a kiln that suits it; those that studios usually run among them.</summary>
    public FiringMenu Menu => menu.Value;

    /// <summary>True for a firing that studios usually run; any is, for a package that does not say.</summary>
    public bool IsUsual(FiringKind kind, PotterCone cone, Atmosphere atmosphere) =>
        usual.Count == 0 || usual.Contains((kind, cone.Order, atmosphere));

    /// <summary>The sources of a rule and of a material, each once.</summary>
    public IReadOnlyList<string> SourcesOf(LoadRuleRow rule, Material material) => material.Id is null
        ? rule.Sources
        : sources.GetOrAdd(
            (rule.Id, material.Id, material is Body), static (_, x) => [.. x.rule.Sources.Union(x.material.Sources)],
            (rule, material));

    /// <summary>True where the package has such a caution; older ones lack some.</summary>
    public bool HasCaution(string id) => cautions.ContainsKey(id);

    /// <summary>A caution.</summary>
    public CautionRow Caution(string id) => cautions[id];

    /// <summary>
    /// The temperatures, °C, at which the default chart prints that a cone is down: at its slowest rate and at its usual one; null
    /// where it prints none.
    /// </summary>
    public (decimal Slowest, decimal Usual)? EndPoint(PotterCone cone) => endPoints.TryGetValue(cone.Text, out var ends) ? ends : null;

    /// <summary>How far a cone and the one it is confused with are apart, °C; null where no chart prints both.</summary>
    public decimal? MixUpCelsius(PotterCone cone) => mixUpCelsius.TryGetValue(cone.Text, out var apart) ? apart : null;
}
