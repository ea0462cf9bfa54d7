namespace ConeService.Firing.Study.Asking;

/// <summary>Draws by a seed: SplitMix64 (Steele, Lea and Flood, 2014), so that a seed gives the same in every version of the
/// runtime.</summary>
internal sealed class Drawing(int seed)
{
    private ulong state = (ulong)seed;

    /// <summary>The items in an order of chance.</summary>
    public IReadOnlyList<T> Shuffle<T>(IEnumerable<T> items)
    {
        var list = items.ToArray();
        for (var i = list.Length - 1; i > 0; i--)
        {
            var j = (int)(Next() % (ulong)(i + 1));
            (list[i], list[j]) = (list[j], list[i]);
        }

        return list;
    }

    private ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
