using ConeService.Data;

namespace ConeService.Firing.Materials;

/// <summary>A set of words of a small vocabulary, kept as bits: asked for every piece at every cone.</summary>
/// <typeparam name="T">The vocabulary, at most 32 words numbered from 0.</typeparam>
internal readonly record struct WordSet<T>
    where T : struct, Enum
{
    private readonly int bits;

    /// <summary>Joins words.</summary>
    public WordSet(IEnumerable<T> words)
    {
        foreach (var word in words) bits |= Bit(word);
    }

    private WordSet(int bits) => this.bits = bits;

    /// <summary>The set as a number, to compare and to key by.</summary>
    internal int Bits => bits;

    /// <summary>True without any word.</summary>
    public bool IsEmpty => bits == 0;

    /// <summary>True when the word is in it.</summary>
    public bool Has(T word) => (bits & Bit(word)) != 0;

    /// <summary>True when they share a word.</summary>
    public bool Overlaps(WordSet<T> other) => (bits & other.bits) != 0;

    /// <summary>The words of both.</summary>
    public WordSet<T> With(WordSet<T> other) => new(bits | other.bits);

    /// <summary>The words of this that are not in the other.</summary>
    public WordSet<T> Without(WordSet<T> other) => new(bits & ~other.bits);

    /// <summary>The words that both have.</summary>
    public WordSet<T> Common(WordSet<T> other) => new(bits & other.bits);

    /// <summary>The words in the order of the vocabulary.</summary>
    public IEnumerable<T> Words()
    {
        var held = this;
        return Enum.GetValues<T>().Where(w => held.Has(w));
    }

    /// <summary>The words as people say them: oxidation, neutral or reduction.</summary>
    public override string ToString() => Words().Select(EnumWords.Word).ToList() switch
    {
        [] => "none",
        [var only] => only,
        [.. var first, var last] => $"{string.Join(", ", first)} or {last}",
    };

    private static int Bit(T word) => 1 << System.Runtime.CompilerServices.Unsafe.As<T, int>(ref word);
}

/// <summary>Sets that need no words named.</summary>
internal static class WordSets
{
    /// <summary>Every word of a vocabulary.</summary>
    public static WordSet<T> All<T>()
        where T : struct, Enum => new(Enum.GetValues<T>());
}
