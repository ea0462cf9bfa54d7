using System.Collections.Frozen;

namespace ConeService.Firing.Study.Searching;

/// <summary>Text as the words that are searched by: small, without the endings of English, and without words that say nothing.</summary>
internal static class SearchWords
{
    private const int LeastStem = 3;

    // “Safe” is what people ask and no answer says: what is known of food stands where food is spoken of.
    private static readonly FrozenSet<string> Empty = (
        "a about an and are as at be been between but by can could did difference do does explain find for from get gets give "
        + "given go goes got happen happens have help how i if in into is it its like long look made make me mean means meaning "
        + "much my need of ok okay on or our out put safe safely shall should so some tell than that the their them then there "
        + "these they this those to too up use used using want was we were what whats when where which while who why will with "
        + "work would you your")
        .Split(' ').ToFrozenSet(StringComparer.Ordinal);

    // As some spell them, for how the package does.
    private static readonly (string Theirs, string Ours)[] Spellings =
    [
        ("color", "colour"), ("gray", "grey"), ("luster", "lustre"), ("sulfur", "sulphur"), ("fiber", "fibre"), ("draught", "draft"),
        ("aluminum", "aluminium"), ("oxidiz", "oxidis"), ("vapor", "vapour"), ("matt", "matte"), ("mould", "mold"), ("sagger", "saggar"),
        ("temmoku", "tenmoku"), ("majolica", "maiolica"), ("degrees", "degree"), ("celcius", "celsius"),
    ];

    private static readonly string[] Endings = ["ings", "ing", "ies", "ous", "ed", "es", "er", "s"];

    // Whatever is asked is asked of some ware in some kiln.
    private static readonly FrozenSet<string> Slight =
        "bowl bowls cup cups kiln kilns jar jars mug mugs piece pieces plate plates pot pots pottery teapot vase vases ware".Split(' ')
            .Select(Stem).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The words of a text, in order, as they are compared.</summary>
    public static IReadOnlyList<string> Of(string? text) => [.. Split(text).Where(w => !Empty.Contains(w)).Select(Stem)];

    /// <summary>The words of a text in small letters; a decimal point stays within its number.</summary>
    public static IReadOnlyList<string> Split(string? text)
    {
        var words = new List<string>();
        var start = -1;
        var letters = (text ?? "").ToLowerInvariant();
        for (var i = 0; i <= letters.Length; i++)
        {
            var within = i < letters.Length && (char.IsLetterOrDigit(letters[i])
                || (letters[i] == '.' && i > 0 && i + 1 < letters.Length
                    && char.IsAsciiDigit(letters[i - 1]) && char.IsAsciiDigit(letters[i + 1])));
            if (within && start < 0) start = i;
            if (within || start < 0) continue;
            words.Add(letters[start..i]);
            start = -1;
        }

        return words;
    }

    /// <summary>Whether a word, without its ending, says little: it helps a hit and does not decide it.</summary>
    public static bool IsSlight(string stem) => Slight.Contains(stem);

    /// <summary>A word without its ending: “crazed”, “crazing” and “craze” are one.</summary>
    public static string Stem(string word)
    {
        if (word.Any(char.IsAsciiDigit)) return word;
        foreach (var (theirs, ours) in Spellings)
        {
            if (word.StartsWith(theirs, StringComparison.Ordinal) && !word.StartsWith(ours, StringComparison.Ordinal))
                word = ours + word[theirs.Length..];
        }

        foreach (var ending in Endings)
        {
            if (!word.EndsWith(ending, StringComparison.Ordinal) || word.Length - ending.Length < LeastStem) continue;
            // “Glass” is no plural, “dresses” is.
            if (ending == "s" && word.EndsWith("ss", StringComparison.Ordinal)) break;
            word = ending == "ies" ? word[..^3] + "y" : word[..^ending.Length];
            break;
        }

        if (word.Length > LeastStem && word[^1] == word[^2] && word[^1] is not ('s' or 'l' or 'e')) word = word[..^1];
        if (word.Length > LeastStem && word[^1] == 'e') word = word[..^1];
        return word[^1] == 'y' && word.Length > LeastStem ? word[..^1] + "i" : word;
    }
}
