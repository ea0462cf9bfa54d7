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
        where T : struct, Enum => of is null ? Vocabulary<T>.Words : [.. of.Select(Word)];

    /// <summary>The value of a word.</summary>
    /// <exception cref="KeyNotFoundException">The word is not of this vocabulary.</exception>
    public static T Of<T>(string word)
        where T : struct, Enum => Vocabulary<T>.Values[word];

    /// <summary>The word of a value.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum => Vocabulary<T>.Texts[value];

    /// <summary>Reads a word; false when it is not of this vocabulary.</summary>
    public static bool TryRead<T>(string? word, out T value)
        where T : struct, Enum => Vocabulary<T>.Values.TryGetValue(word ?? "", out value);

    /// <summary>Reads a word of some values; false when it is none of theirs; null: every value.</summary>
    public static bool TryRead<T>(string? word, IReadOnlyList<T>? of, out T value)
        where T : struct, Enum => TryRead(word, out value) && of?.Contains(value) != false;

    private static class Vocabulary<T>
        where T : struct, Enum
    {
        public static readonly IReadOnlyList<string> Words = [.. Enum.GetValues<T>().Select(Kebab)];

        public static readonly Dictionary<string, T> Values = Enum.GetValues<T>().ToDictionary(Kebab, StringComparer.Ordinal);

        public static readonly Dictionary<T, string> Texts = Enum.GetValues<T>().ToDictionary(v => v, Kebab);

        private static string Kebab(T value) => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());
    }
}
