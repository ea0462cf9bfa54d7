using System.Numerics;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>A set by number, as bits: of placements, or of firings of the menu.</summary>
internal sealed class PlacementSet(int size)
{
    private readonly ulong[] words = new ulong[(size + 63) / 64];

    public int Count
    {
        get
        {
            var count = 0;
            foreach (var word in words) count += BitOperations.PopCount(word);
            return count;
        }
    }

    public bool IsEmpty => words.AsSpan().IndexOfAnyExcept(0UL) < 0;

    public void Add(int i) => words[i >> 6] |= 1UL << (i & 63);

    /// <summary>Adds all of the other.</summary>
    public void Add(PlacementSet other)
    {
        for (var i = 0; i < words.Length; i++) words[i] |= other.words[i];
    }

    public bool Has(int i) => (words[i >> 6] >> (i & 63) & 1) != 0;

    /// <summary>True when both hold the same.</summary>
    public bool IsSame(PlacementSet other) => words.AsSpan().SequenceEqual(other.words);

    /// <summary>A number that is the same for sets that hold the same.</summary>
    public int Hash()
    {
        var hash = 17UL;
        foreach (var word in words) hash = (hash * 31) ^ word;
        return hash.GetHashCode();
    }

    /// <summary>How many of these are in the other.</summary>
    public int CountIn(PlacementSet other)
    {
        var count = 0;
        for (var i = 0; i < words.Length; i++) count += BitOperations.PopCount(words[i] & other.words[i]);
        return count;
    }

    public bool IsIn(PlacementSet other)
    {
        for (var i = 0; i < words.Length; i++)
        {
            if ((words[i] & ~other.words[i]) != 0) return false;
        }

        return true;
    }

    /// <summary>These without the others.</summary>
    public PlacementSet Without(PlacementSet other)
    {
        var rest = new PlacementSet(size);
        for (var i = 0; i < words.Length; i++) rest.words[i] = words[i] & ~other.words[i];
        return rest;
    }

    /// <summary>Those in both.</summary>
    public PlacementSet Common(PlacementSet other)
    {
        var both = new PlacementSet(size);
        for (var i = 0; i < words.Length; i++) both.words[i] = words[i] & other.words[i];
        return both;
    }

    public IEnumerable<int> Items()
    {
        for (var i = 0; i < size; i++)
        {
            if (Has(i)) yield return i;
        }
    }
}
