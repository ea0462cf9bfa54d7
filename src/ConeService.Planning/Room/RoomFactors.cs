using ConeService.Data;

namespace ConeService.Planning.Room;

/// <summary>
/// Figures of the model of room. The clearances are those of the load rules; the filling factors were measured against packing of mixed
/// ware by geometry, 40 loads each in kilns of 74 to 680 L: at them the layers take 0.89 to 0.99 of what really goes in and overfill no load.
/// </summary>
internal sealed class RoomFactors
{
    /// <summary>How much of a round shelf ware covers in practice.</summary>
    public const double Round = 0.70;

    /// <summary>How much of a rectangular one.</summary>
    public const double Rectangular = 0.72;

    /// <summary>Thickness of a shelf that nobody told of, mm.</summary>
    public const int ShelfThickness = 20;

    /// <summary>The lowest ware that layers are counted for where nobody told how many there are, mm.</summary>
    public const int LowestLayer = 50;

    /// <summary>Loading, min.</summary>
    public const int LoadingMinutes = 60;

    /// <summary>Unloading, min.</summary>
    public const int UnloadingMinutes = 30;

    /// <summary>From unloading until ware can be loaded again, min.</summary>
    public const double HandlingMinutes = 2880;

    /// <summary>How full a kiln must be, %.</summary>
    public const double MinimumFillPercent = 70;

    /// <summary>The share of its square that a disc takes, as the load check has it.</summary>
    public const double Disc = 0.785;

    /// <summary>How often bisque stands in the room that it takes, as the load check has it.</summary>
    public const int BisqueStacks = 2;

    /// <summary>The figures of a package.</summary>
    public RoomFactors(Dataset dataset)
    {
        Lid = Figure(dataset, "clearance-to-lid")?.ValueMin ?? 25;
        Above = Figure(dataset, "shelf-above-tallest-piece")?.ValueMin ?? 6;
        Apart = Figure(dataset, "glazed-pieces-apart")?.ValueMax ?? 6;
        Side = Figure(dataset, "clearance-to-elements")?.ValueMin ?? 25;
        MostVolume = Figure(dataset, "load-within-room")?.ValueMax ?? 0.75m;
    }

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

    private static LoadRuleRow? Figure(Dataset dataset, string id) => dataset.LoadRules.FirstOrDefault(r => r.Id == id);
}
