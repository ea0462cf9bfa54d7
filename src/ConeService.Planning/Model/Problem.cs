using ConeService.Firing.Room;

namespace ConeService.Planning.Model;

/// <summary>
/// A request in whole numbers: minutes from the start of the horizon, shares of a layer in 1/10,000, cost in 1/100. Immutable; what search,
/// bounds and solver work on.
/// </summary>
internal sealed class Problem
{
    /// <summary>A whole layer, and a whole room.</summary>
    public const int Whole = KilnRoom.WholeLayer;

    /// <summary>Minutes of a day.</summary>
    public const int Day = 1440;

    /// <summary>End of the horizon, min; firings start before it.</summary>
    public required int Horizon { get; init; }

    /// <summary>The kilns.</summary>
    public required IReadOnlyList<KilnModel> Kilns { get; init; }

    /// <summary>The pieces, those alike together.</summary>
    public required IReadOnlyList<Item> Items { get; init; }

    /// <summary>The firings of all items, one after another.</summary>
    public required IReadOnlyList<Stage> Stages { get; init; }

    /// <summary>How full a kiln must be unless a date asks for it, in 1/10,000.</summary>
    public required int MinimumFill { get; init; }

    /// <summary>Firings that stand, by loading.</summary>
    public IReadOnlyList<Pin> Pins { get; init; } = [];

    /// <summary>Firings of a former plan.</summary>
    public IReadOnlyList<Announced> Announced { get; init; } = [];

    /// <summary>What must be saved for each change against a former plan, in 1/100: a tenth of a firing.</summary>
    public long ChangePrice => Announced.Count == 0
        ? 0
        : (Kilns.SelectMany(k => k.Types).Select(t => t.Cost).DefaultIfEmpty().Max() / Scorer.FiringMoved) + 1;

    /// <summary>The same with other kilns or items.</summary>
    public Problem With(IReadOnlyList<KilnModel>? kilns = null, IReadOnlyList<Item>? items = null) => new()
    {
        Horizon = Horizon,
        Kilns = kilns ?? Kilns,
        Items = items ?? Items,
        Stages = Stages,
        MinimumFill = MinimumFill,
        Pins = Pins,
        Announced = Announced,
    };

    /// <summary>The item of a stage.</summary>
    public Item ItemOf(int stage) => Items[Stages[stage].Item];

    /// <summary>How many firings of pieces there are in all.</summary>
    public int AllFirings => Stages.Sum(s => Items[s.Item].Count);

    /// <summary>What it weighs that a piece is unloaded from its last firing at a moment; 0 when that is not late.</summary>
    public static long Lateness(Item item, int unloaded) => item is { DueBinds: true, Due: { } due } && unloaded > due
        ? item.Priority * (LatePiece + ((long)(unloaded - due + Day - 1) / Day))
        : 0;

    // A late piece weighs as much as a thousand days.
    internal const long LatePiece = 1000;
}

/// <summary>Pieces alike in everything.</summary>
/// <param name="Index">Its place among the items.</param>
/// <param name="Count">How many.</param>
/// <param name="Ready">From when they can be loaded, min.</param>
/// <param name="Due">When they shall be unloaded from their last firing, min; null: no date.</param>
/// <param name="Priority">How much the date counts.</param>
/// <param name="Handling">From unloading until they can be loaded again, min.</param>
/// <param name="FirstStage">Its first stage.</param>
/// <param name="StageCount">How many firings each of them gets.</param>
/// <param name="DueBinds">True when the date lies within what is planned: left undone they are late.</param>
/// <param name="UndoneLateness">What one of them weighs that is left undone; no less than one that is as late as can be.</param>
internal sealed record Item(
    int Index, int Count, int Ready, int? Due, int Priority, int Handling, int FirstStage, int StageCount, bool DueBinds,
        long UndoneLateness)
{
    /// <summary>Its last stage.</summary>
    public int LastStage => FirstStage + StageCount - 1;
}

/// <summary>A firing that each piece of an item gets.</summary>
/// <param name="Index">Its place among all stages.</param>
/// <param name="Item">The item.</param>
/// <param name="Number">Its place among those of the item, from 0.</param>
/// <param name="IsLast">True for the last firing.</param>
internal sealed record Stage(int Index, int Item, int Number, bool IsLast);

/// <summary>A kiln.</summary>
internal sealed class KilnModel
{
    /// <summary>Its place among the kilns.</summary>
    public required int Index { get; init; }

    /// <summary>Its room.</summary>
    public required KilnRoom Room { get; init; }

    /// <summary>When it can be started, min, rising.</summary>
    public required IReadOnlyList<int> Starts { get; init; }

    /// <summary>Time for loading, min.</summary>
    public required int Loading { get; init; }

    /// <summary>What it can be fired with.</summary>
    public required IReadOnlyList<FiringType> Types { get; init; }

    /// <summary>When it is unloaded, by programme and start, min; −1 where it can't be started so.</summary>
    public required IReadOnlyList<int[]> Ends { get; init; }

    /// <summary>What each stage takes of its room; share 0 where it does not go in.</summary>
    public required IReadOnlyList<Slot> Slots { get; init; }

    /// <summary>When loading for a start begins, min.</summary>
    public int LoadAt(int start) => Starts[start] - Loading;

    /// <summary>When a firing is unloaded, min; −1 where there can be none.</summary>
    public int EndOf(int start, int type) => Ends[Types[type].Programme][start];
}

/// <summary>A firing that a kiln runs, with a company that may share it.</summary>
/// <param name="Menu">Entry of the kiln's menu.</param>
/// <param name="Takes">By stage: whether it may be in it.</param>
/// <param name="Cost">What it costs, in 1/100.</param>
/// <param name="Programme">How it is fired: slower for thick or damp ware than for thin. An entry has one or several.</param>
internal sealed record FiringType(int Menu, bool[] Takes, long Cost, int Programme);

/// <summary>A firing that stands.</summary>
/// <param name="Kiln">The kiln.</param>
/// <param name="Start">Its place among the starts of the kiln.</param>
/// <param name="Type">What it is.</param>
/// <param name="Closed">True: nothing more goes in.</param>
/// <param name="Contents">What is in it.</param>
internal sealed record Pin(int Kiln, int Start, int Type, bool Closed, IReadOnlyList<StageCount> Contents);

/// <summary>A firing of a former plan.</summary>
/// <param name="Kiln">The kiln.</param>
/// <param name="Start">Its place among the starts of the kiln.</param>
/// <param name="Menu">Entry of the kiln's menu.</param>
/// <param name="Contents">What was in it.</param>
internal sealed record Announced(int Kiln, int Start, int Menu, IReadOnlyList<StageCount> Contents);

/// <summary>Pieces of one stage.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Count">How many.</param>
internal readonly record struct StageCount(int Stage, int Count);
