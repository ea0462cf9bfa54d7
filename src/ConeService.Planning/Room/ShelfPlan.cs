using ConeService.Planning.Model;

namespace ConeService.Planning.Room;

/// <summary>
/// What stands on which layer: tall first, each piece on the first layer that has room for it. Where whole pieces do not come out even with
/// the layers counted, the last ones go to the emptiest layer: the filling factor leaves room for that.
/// </summary>
internal static class ShelfPlan
{
    /// <summary>The layers of a firing, tall first.</summary>
    public static IReadOnlyList<Layer> Of(Problem problem, KilnModel kiln, IReadOnlyList<StageCount> contents)
    {
        var sorted = contents
            .OrderByDescending(c => kiln.Slots[c.Stage].Height).ThenByDescending(c => kiln.Slots[c.Stage].Share).ThenBy(c => c.Stage).ToList();
        var layers = new List<Layer>();
        foreach (var (stage, count) in sorted)
        {
            var slot = kiln.Slots[stage];
            var tall = sorted.Where(c => kiln.Slots[c.Stage].Height >= slot.Height).Sum(c => (long)kiln.Slots[c.Stage].Share * c.Count);
            var counted = Math.Max(1, (int)((tall + Problem.Whole - 1) / Problem.Whole));
            for (var left = count; left > 0; left--)
            {
                var layer = layers.Find(l => l.Share + slot.Share <= Problem.Whole);
                if (layer is null && layers.Count < counted) layers.Add(layer = new(slot.Height));
                layer ??= layers.MinBy(l => l.Share)!;
                layer.Add(stage, slot.Share);
            }
        }

        return layers;
    }
}

/// <summary>A layer.</summary>
/// <param name="height">Height that its ware needs, mm.</param>
internal sealed class Layer(int height)
{
    private readonly List<StageCount> contents = [];

    /// <summary>Height that its ware needs, mm.</summary>
    public int Height { get; } = height;

    /// <summary>How much of it is taken, in 1/10,000.</summary>
    public int Share { get; private set; }

    /// <summary>What stands on it, tall first.</summary>
    public IReadOnlyList<StageCount> Contents => contents;

    /// <summary>Puts a piece on it.</summary>
    public void Add(int stage, int share)
    {
        Share += share;
        if (contents.Count > 0 && contents[^1].Stage == stage) contents[^1] = new(stage, contents[^1].Count + 1);
        else contents.Add(new(stage, 1));
    }
}
