using ConeService.Data;
using ConeService.Firing.Loads;

namespace ConeService.Firing.Room;

/// <summary>
/// Figures of the model of room. The clearances are those of the load rules; filling factors and what is taken where nothing was told are
/// rows of loading-defaults.
/// </summary>
internal sealed record RoomFactors
{
    /// <summary>The share of its square that a disc takes, as the load check has it.</summary>
    public const double Disc = 0.785;

    private static readonly string[] Needed =
    [
        "bisque-stacks", "filling-factor-rectangular", "filling-factor-round", "handling-minutes", "lowest-layer", "minimum-fill",
        "shelf-thickness", "unloading-minutes",
    ];

    private readonly Dictionary<string, decimal> values;

    private RoomFactors(Dataset dataset)
    {
        values = dataset.LoadingDefaults.ToDictionary(r => r.Id, r => r.Value, StringComparer.Ordinal);
        Lid = Figure(dataset, LoadRuleIds.RoomAbove)?.ValueMin ?? 25;
        Above = Figure(dataset, LoadRuleIds.ShelfAbove)?.ValueMin ?? 6;
        Apart = Figure(dataset, "glazed-pieces-apart")?.ValueMax ?? 6;
        Side = Figure(dataset, "clearance-to-elements")?.ValueMin ?? 25;
        MostVolume = Figure(dataset, LoadRuleIds.LoadWithinRoom)?.ValueMax ?? 0.75m;
        LoadingMinutes = (int)(dataset.ScheduleDefaults.FirstOrDefault(r => r.Id == "loading-minutes")?.Value ?? 60);
    }

    /// <summary>The figures of a package; null for one of before 1.7, which has none.</summary>
    public static RoomFactors? Of(Dataset dataset) => dataset.LoadingDefaults.Count == 0 ? null : new(dataset);

    /// <summary>What is missing from a package that has figures.</summary>
    public static IEnumerable<PackageFault> Requires(Dataset dataset) => dataset.LoadingDefaults.Count == 0 ? [] : Requirements.Ids(
        dataset, "loading-defaults", Needed, dataset.LoadingDefaults.Select(r => r.Id), "the model of room");

    /// <summary>How much of a round shelf ware covers in practice.</summary>
    public double Round => Value("filling-factor-round");

    /// <summary>How much of a rectangular one.</summary>
    public double Rectangular => Value("filling-factor-rectangular");

    /// <summary>False where only area counts, and not how pieces stand side by side: to measure what that is worth.</summary>
    public bool CountsSideBySide { get; init; } = true;

    /// <summary>Thickness of a shelf that nobody told of, mm.</summary>
    public int ShelfThickness => (int)Value("shelf-thickness");

    /// <summary>The lowest ware that layers are counted for where nobody told how many there are, mm.</summary>
    public int LowestLayer => (int)Value("lowest-layer");

    /// <summary>How often bisque stands in the room that it takes, as the load check has it.</summary>
    public double BisqueStacks => Value("bisque-stacks");

    /// <summary>Loading, min.</summary>
    public int LoadingMinutes { get; }

    /// <summary>Unloading, min.</summary>
    public int UnloadingMinutes => (int)Value("unloading-minutes");

    /// <summary>From unloading until ware can be loaded again, min.</summary>
    public double HandlingMinutes => Value("handling-minutes");

    /// <summary>How full a kiln must be, %.</summary>
    public double MinimumFillPercent => Value("minimum-fill");

    /// <summary>Free below the lid, mm.</summary>
    public decimal Lid { get; }

    /// <summary>Free between a piece and the shelf above, mm.</summary>
    public decimal Above { get; }

    /// <summary>Free between pieces, mm; pieces of a bisque may touch.</summary>
    public decimal Apart { get; }

    /// <summary>Free between ware and wall, mm.</summary>
    public decimal Side { get; }

    /// <summary>The most of the room that the load check lets ware take, 1.</summary>
    public decimal MostVolume { get; }

    private double Value(string id) => (double)values[id];

    private static LoadRuleRow? Figure(Dataset dataset, string id) => dataset.LoadRules.FirstOrDefault(r => r.Id == id);
}
