using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Practice;

/// <summary>Keeps the rows that have a word; a word that no row has is refused, so that a slip is not an empty list.</summary>
internal sealed class RowFilter
{
    private readonly List<Finding> findings = [];

    /// <summary>The rows that pass.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="sent">The word as sent; null for all rows.</param>
    /// <param name="parameter">Name of the parameter.</param>
    /// <param name="wordsOf">The words of a row.</param>
    /// <param name="aliases">Other words for them.</param>
    public IReadOnlyList<T> Keep<T>(
        IReadOnlyList<T> rows, string? sent, string parameter, Func<T, IEnumerable<string>> wordsOf,
        IReadOnlyDictionary<string, string>? aliases = null)
    {
        if (string.IsNullOrWhiteSpace(sent)) return rows;
        var word = sent.Trim().ToLowerInvariant();
        word = aliases?.GetValueOrDefault(word) ?? word;
        var kept = rows.Where(r => wordsOf(r).Any(w => w.Equals(word, StringComparison.OrdinalIgnoreCase))).ToList();
        if (kept.Count > 0) return kept;
        List<string> known = [.. rows.SelectMany(wordsOf).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        findings.Add(new(
            FindingCodes.WordUnknown, parameter, sent,
            Message.Of("schedules.word-unknown", ("sent", sent), ("parameter", parameter)), Message.Verbatim(known),
            NearMatches.Find(word, known) is [var near, ..] ? Message.Of("answers.near-match", ("near", near)) : null));
        return [];
    }

    /// <summary>Refuses what could not be read.</summary>
    /// <exception cref="RefusedException">A word is unknown; carries every finding.</exception>
    public void ThrowAny()
    {
        if (findings.Count > 0) throw new RefusedException(findings);
    }
}
