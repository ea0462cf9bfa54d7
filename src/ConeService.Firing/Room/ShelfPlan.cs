namespace ConeService.Firing.Room;

/// <summary>
/// What stands on which layer, tall first. The layers are those that <see cref="Packing"/> counts. What takes more than half a layer gets
/// its own first, the lowest that is high enough; then the others, tall first, each the first layer with room. Where whole pieces do not
/// come out even with the layers counted, the last ones go to the emptiest layer: the filling factor leaves room for that.
/// </summary>
internal static class ShelfPlan
{
    /// <summary>The layers of a load, tall first.</summary>
    /// <param name="pieces">Pieces by a key of the caller's, with what one of them takes.</param>
    public static IReadOnlyList<Layer> Of(IEnumerable<(int Key, int Count, Slot Slot)> pieces)
    {
        var sorted = pieces.OrderByDescending(p => p.Slot.Height).ThenByDescending(p => p.Slot.Share).ThenBy(p => p.Key).ToList();
        var layers = Count(sorted);
        foreach (var (key, count, slot) in sorted.Where(p => IsWide(p.Slot)))
        {
            for (var left = count; left > 0; left--) (layers.FindLast(l => l.Takes(slot)) ?? Emptiest(layers, slot)).Add(key, slot);
        }

        foreach (var (key, count, slot) in sorted.Where(p => !IsWide(p.Slot)))
        {
            for (var left = count; left > 0; left--) (layers.Find(l => l.Takes(slot)) ?? Emptiest(layers, slot)).Add(key, slot);
        }

        return layers.FindAll(l => l.Contents.Count > 0);
    }

    private static bool IsWide(Slot slot) => 2 * slot.Share > KilnRoom.WholeLayer;

    private static List<Layer> Count(List<(int Key, int Count, Slot Slot)> sorted)
    {
        var layers = new List<Layer>();
        long share = 0;
        foreach (var (_, count, slot) in sorted)
        {
            share += (long)slot.Share * count;
            // What does not go in, and stands there all the same, is on a layer too.
            if (layers.Count == 0) layers.Add(new(slot.Height));
            while ((long)layers.Count * KilnRoom.WholeLayer < share) layers.Add(new(slot.Height));
        }

        return layers;
    }

    private static Layer Emptiest(List<Layer> layers, Slot slot) => layers.Where(l => l.Height >= slot.Height).MinBy(l => l.Share)!;
}

/// <summary>A layer.</summary>
/// <param name="height">Height that its ware needs, mm.</param>
internal sealed class Layer(int height)
{
    private readonly List<Standing> contents = [];

    /// <summary>Height that its ware needs, mm.</summary>
    public int Height { get; } = height;

    /// <summary>How much of it is taken, in 1/10,000.</summary>
    public int Share { get; private set; }

    /// <summary>What stands on it, tall first.</summary>
    public IReadOnlyList<(int Key, int Count)> Contents =>
        [.. contents.OrderByDescending(s => s.Slot.Height).ThenByDescending(s => s.Slot.Share).ThenBy(s => s.Key)
            .Select(s => (s.Key, s.Count))];

    /// <summary>Whether it has room for a piece.</summary>
    public bool Takes(Slot slot) => Height >= slot.Height && Share + slot.Share <= KilnRoom.WholeLayer;

    /// <summary>Puts a piece on it.</summary>
    public void Add(int key, Slot slot)
    {
        Share += slot.Share;
        var at = contents.FindIndex(s => s.Key == key);
        if (at < 0) contents.Add(new(key, slot, 1));
        else contents[at] = contents[at] with { Count = contents[at].Count + 1 };
    }

    private sealed record Standing(int Key, Slot Slot, int Count);
}
