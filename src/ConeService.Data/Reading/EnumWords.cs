using System.Runtime.CompilerServices;
using System.Text.Json;

namespace ConeService.Data;

/// <summary>The words of a closed vocabulary, as the data files and the JSON contract both write them: kebab-case.</summary>
public static class EnumWords
{
    /// <summary>Every word, in the order of the vocabulary.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => Vocabulary<T>.Words;

    /// <summary>The words of some values, in their order; null: every word.</summary>
    public static IReadOnlyList<string> All<T>(IReadOnlyList<T>? of)
        where T : struct, Enum
    {
        if (of is null)
            return Vocabulary<T>.Words;
        var words = new string[of.Count];
        for (var i = 0; i < words.Length; i++)
            words[i] = Vocabulary<T>.Word(of[i]);
        return words;
    }

    /// <summary>The value of a word.</summary>
    /// <exception cref="KeyNotFoundException">The word is not of this vocabulary.</exception>
    public static T Of<T>(string word)
        where T : struct, Enum => Vocabulary<T>.TryRead(word, out var value)
            ? value
            : throw new KeyNotFoundException($"'{word}' is no word of {typeof(T).Name}.");

    /// <summary>The word of a value.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum => Vocabulary<T>.Word(value);

    /// <summary>Reads a word; false when it is not of this vocabulary.</summary>
    public static bool TryRead<T>(string? word, out T value)
        where T : struct, Enum => Vocabulary<T>.TryRead(word ?? "", out value);

    /// <summary>Reads a word of some values; false when it is none of theirs; null: every value.</summary>
    public static bool TryRead<T>(string? word, IReadOnlyList<T>? of, out T value)
        where T : struct, Enum => TryRead(word, out value) && of?.Contains(value) != false;

    // Keyed by numbers and texts: a collection of the framework over a type of ours is compiled anew for each type at every start,
    // even where the service was compiled ahead, and there are sixty vocabularies.
    private static class Vocabulary<T>
        where T : struct, Enum
    {
        // The generic forms are compiled anew for each of some sixty enums, and a start waits for that.
#pragma warning disable CA2263
        public static readonly string[] Words = Array.ConvertAll(Enum.GetNames(typeof(T)), JsonNamingPolicy.KebabCaseLower.ConvertName);

        private static readonly T[] Values = Array.ConvertAll((int[])Enum.GetValuesAsUnderlyingType(typeof(T)), Value);
#pragma warning restore CA2263

        private static readonly Dictionary<string, int> Places = PlacesOf(Words);

        private static readonly Dictionary<int, string> Texts = TextsOf(Words, Values);

        public static bool TryRead(string word, out T value)
        {
            var isKnown = Places.TryGetValue(word, out var place);
            value = isKnown ? Values[place] : default;
            return isKnown;
        }

        public static string Word(T value) => Texts[Number(value)];

        // In the order of their numbers, as their names are.
        private static T Value(int number) => Unsafe.BitCast<int, T>(number);

        private static int Number(T value) => Unsafe.SizeOf<T>() == sizeof(int)
            ? Unsafe.BitCast<T, int>(value)
            : throw new NotSupportedException($"{typeof(T).Name} is no vocabulary: its numbers are not int.");

        private static Dictionary<string, int> PlacesOf(string[] words)
        {
            var places = new Dictionary<string, int>(words.Length, StringComparer.Ordinal);
            for (var i = 0; i < words.Length; i++)
                places.Add(words[i], i);
            return places;
        }

        private static Dictionary<int, string> TextsOf(string[] words, T[] values)
        {
            var texts = new Dictionary<int, string>(words.Length);
            for (var i = 0; i < words.Length; i++)
                texts.Add(Number(values[i]), words[i]);
            return texts;
        }
    }
}
