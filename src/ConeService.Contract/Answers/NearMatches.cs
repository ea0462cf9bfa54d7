using ConeService.Contract.Texts;

namespace ConeService.Contract.Answers;

/// <summary>Finds the names a caller may have meant.</summary>
public static class NearMatches
{
    /// <summary>“Probably …” with the nearest of the candidates; null when none is near.</summary>
    public static Message? Probably(string text, IEnumerable<string> candidates) =>
        Find(text, candidates) is [var near, ..] ? Message.Of("answers.near-match", ("near", near)) : null;

    /// <summary>
    /// The candidates nearest to <paramref name="text"/> by edit distance, at most <paramref name="most"/>; names that share
    /// a word count as near.
    /// </summary>
    public static IReadOnlyList<string> Find(string text, IEnumerable<string> candidates, int most = 3)
    {
        var wanted = text.Trim().ToLowerInvariant();
        var words = wanted.Split(['-', ' ', '_'], StringSplitOptions.RemoveEmptyEntries);
        return [.. candidates
            .Select(candidate => (candidate, score: Score(wanted, words, candidate)))
            .Where(x => x.score < 0.67)
            .OrderBy(x => x.score)
            .ThenBy(x => x.candidate, StringComparer.Ordinal)
            .Take(most)
            .Select(x => x.candidate)];
    }

    private static double Score(string wanted, string[] words, string candidate)
    {
        var distance = (double)EditDistance(wanted, candidate) / Math.Max(1, Math.Max(wanted.Length, candidate.Length));
        var shared = candidate.Split('-').Intersect(words, StringComparer.Ordinal).Any();
        return shared ? distance * 0.5 : distance;
    }

    /// <summary>Levenshtein distance, two rows at a time.</summary>
    private static int EditDistance(string a, string b)
    {
        var previous = Enumerable.Range(0, b.Length + 1).ToArray();
        var current = new int[b.Length + 1];
        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var substitution = previous[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                current[j] = Math.Min(substitution, Math.Min(previous[j], current[j - 1]) + 1);
            }

            (previous, current) = (current, previous);
        }

        return previous[b.Length];
    }
}
