namespace ConeService.Firing.Room;

/// <summary>
/// What stands in one kiln. Pieces of a height or more need together a whole number of layers, rounded up, at every height; the layers
/// stand on each other: with heights h₁ &gt; h₂ &gt; …, n(h) = ⌈Σ shares of pieces at least h⌉, Σ (n(hᵢ) − n(hᵢ₋₁)) × (hᵢ + shelf) ≤
/// height, and n ≤ the layers there are. Beside it the load check's own rule, by the volume that ware takes, must hold.
/// </summary>
internal sealed class Packing(KilnRoom room)
{
    private readonly List<(int Height, long Share)> levels = [];
    private long volume;

    /// <summary>True when nothing is in it.</summary>
    public bool IsEmpty => levels.Count == 0;

    /// <summary>How full it is, in 1/10,000: of its height, or of its layers where they run out first.</summary>
    public int Fill
    {
        get
        {
            long heights = 0, shares = 0;
            foreach (var (height, share) in levels)
            {
                heights += share * (height + room.Shelf);
                shares += share;
            }

            return (int)Math.Max(heights / room.Height, shares / room.Layers);
        }
    }

    /// <summary>How many more pieces go in, at most a number.</summary>
    public int MostOf(Slot slot, int most)
    {
        if (slot.Share == 0 || most <= 0) return 0;
        if (slot.Volume > 0) most = (int)Math.Min(most, (KilnRoom.WholeVolume - volume) / slot.Volume);
        if (most <= 0 || Fits(slot, most)) return Math.Max(0, most);
        var (none, some) = (0, most);
        while (some - none > 1)
        {
            var half = (none + some) / 2;
            if (Fits(slot, half)) none = half;
            else some = half;
        }

        return none;
    }

    /// <summary>Puts pieces in, whether they fit or not.</summary>
    public void Add(Slot slot, int count)
    {
        volume += (long)slot.Volume * count;
        var at = 0;
        while (at < levels.Count && levels[at].Height > slot.Height) at++;
        if (at < levels.Count && levels[at].Height == slot.Height)
            levels[at] = (slot.Height, levels[at].Share + ((long)slot.Share * count));
        else levels.Insert(at, (slot.Height, (long)slot.Share * count));
    }

    /// <summary>Whether what is in it fits.</summary>
    public bool IsWithin => volume <= KilnRoom.WholeVolume && Fits(default, 0);

    /// <summary>Takes everything out.</summary>
    public void Clear()
    {
        volume = 0;
        levels.Clear();
    }

    private bool Fits(Slot slot, int count)
    {
        long sum = 0, layers = 0, used = 0, more = (long)slot.Share * count;
        var pending = count > 0;
        foreach (var (height, share) in levels)
        {
            if (pending && slot.Height >= height)
            {
                pending = false;
                if (!Step(slot.Height, more)) return false;
            }

            if (!Step(height, share)) return false;
        }

        return !pending || Step(slot.Height, more);

        bool Step(int height, long share)
        {
            sum += share;
            var needed = (sum + KilnRoom.WholeLayer - 1) / KilnRoom.WholeLayer;
            used += (needed - layers) * (height + room.Shelf);
            layers = needed;
            return used <= room.Height && layers <= room.Layers;
        }
    }
}
