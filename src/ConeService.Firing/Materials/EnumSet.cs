using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Materials;

/// <summary>A set of words of a small vocabulary, kept as bits: asked for every piece at every cone.</summary>
/// <typeparam name="T">The vocabulary, at most 32 words numbered from 0.</typeparam>
internal readonly record struct EnumSet<T>
    where T : struct, Enum
{
    private readonly int bits;

    /// <summary>Joins words.</summary>
    public EnumSet(IEnumerable<T> words)
    {
        foreach (var word in words) bits |= Bit(word);
    }

    private EnumSet(int bits) => this.bits = bits;

    /// <summary>The set as a number, to compare and to key by.</summary>
    internal int Bits => bits;

    /// <summary>True without any word.</summary>
    public bool IsEmpty => bits == 0;

    /// <summary>True when the word is in it.</summary>
    public bool Has(T word) => (bits & Bit(word)) != 0;

    /// <summary>True when they share a word.</summary>
    public bool Overlaps(EnumSet<T> other) => (bits & other.bits) != 0;

    /// <summary>The words of both.</summary>
    public EnumSet<T> With(EnumSet<T> other) => new(bits | other.bits);

    /// <summary>The words of this and one more.</summary>
    public EnumSet<T> With(T word) => new(bits | Bit(word));

    /// <summary>The words of this that are not in the other.</summary>
    public EnumSet<T> Without(EnumSet<T> other) => new(bits & ~other.bits);

    /// <summary>The words that both have.</summary>
    public EnumSet<T> Common(EnumSet<T> other) => new(bits & other.bits);

    /// <summary>The words in the order of the vocabulary.</summary>
    public IEnumerable<T> Items()
    {
        var held = this;
        return Enum.GetValues<T>().Where(w => held.Has(w));
    }

    /// <summary>The words as people say them: oxidation, neutral or reduction.</summary>
    public Message Spoken => Items().Select(w => Message.Of("materials.word", ("word", EnumWords.Word(w)))).ToList() switch
    {
        [] => Message.Of("materials.none"),
        [var only] => only,
        [.. var first, var last] => Message.Of("materials.either", ("first", first), ("last", last)),
    };

    private static int Bit(T word) => 1 << System.Runtime.CompilerServices.Unsafe.As<T, int>(ref word);
}

/// <summary>Sets that need no words named.</summary>
internal static class EnumSet
{
    /// <summary>Every word of a vocabulary.</summary>
    public static EnumSet<T> All<T>()
        where T : struct, Enum => new(Enum.GetValues<T>());
}
