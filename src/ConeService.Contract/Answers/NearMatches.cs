using ConeService.Contract.Texts;

namespace ConeService.Contract.Answers;

/// <summary>
/// Finds the names a caller may have meant. A name is near when at most a third of the letters sent are wrong, or when it holds
/// every word that was sent, so spelt, and more; it is never the contrary of what was sent.
/// </summary>
public static class NearMatches
{
    // Longer than any name there is; beyond it nothing is searched, as the search takes the product of both lengths.
    private const int LongestWord = 64;

    /// <summary>“Probably …” with the nearest of the candidates; null when none is near.</summary>
    public static Message? Probably(string text, IEnumerable<string> candidates) =>
        Find(text, candidates) is [var near, ..] ? Message.Of("answers.near-match", ("near", near)) : null;

    /// <summary>The candidates near to <paramref name="text"/>, the nearest first, at most <paramref name="most"/>.</summary>
    public static IReadOnlyList<string> Find(string text, IEnumerable<string> candidates, int most = 3)
    {
        if (text.AsSpan().Trim().Length is 0 or > LongestWord) return [];
        var wanted = text.Trim().ToLowerInvariant();
        var words = Words(wanted);
        return [.. candidates
            .Select(candidate => (candidate, distance: Distance(wanted, words, candidate.ToLowerInvariant())))
            .Where(x => x.distance is not null)
            .OrderBy(x => x.distance)
            .ThenBy(x => x.candidate.Length)
            .ThenBy(x => x.candidate, StringComparer.Ordinal)
            .Take(most)
            .Select(x => x.candidate)];
    }

    /// <summary>The share of the letters sent that is wrong; null when the candidate is not near.</summary>
    private static double? Distance(string wanted, string[] words, string candidate)
    {
        var parts = Words(candidate);
        // Whether a candidate is the contrary is asked last, as it takes longest and few are near.
        return Wrong(wanted, words, candidate, parts) is { } wrong && !Opposites.Between(words, parts)
            ? (double)wrong / wanted.Length
            : null;
    }

    private static int? Wrong(string wanted, string[] words, string candidate, string[] parts)
    {
        if (EditDistance.ToNear(wanted, candidate) is { } whole) return whole;
        if (parts.Length <= words.Length) return null;
        var wrong = 0;
        foreach (var word in words)
        {
            if (parts.Min(p => EditDistance.ToNear(word, p)) is not { } least) return null;
            wrong += least;
        }

        return wrong;
    }

    private static string[] Words(string text) => text.Split(['-', ' ', '_', '.'], StringSplitOptions.RemoveEmptyEntries);
}
