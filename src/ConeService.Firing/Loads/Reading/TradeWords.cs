using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Words of the trade that are none of the contract.</summary>
internal sealed class TradeWords(IReadOnlyList<TradeWordRow> rows)
{
    private readonly ILookup<string, TradeWordRow> vocabularies = rows.ToLookup(r => r.Vocabulary, StringComparer.Ordinal);

    /// <summary>What a word stands for, spelt so or nearly so; none where nothing is known of it.</summary>
    /// <param name="vocabulary">state, firing-kind or atmosphere.</param>
    /// <param name="sent">The word as sent.</param>
    public IReadOnlyList<string> Meant(string vocabulary, string sent)
    {
        var words = vocabularies[vocabulary].ToDictionary(r => r.Word, r => r.Means, StringComparer.Ordinal);
        var word = string.Join('-', sent.ToLowerInvariant().Split([' ', '_', '-'], StringSplitOptions.RemoveEmptyEntries));
        if (words.TryGetValue(word, out var means)) return means;
        // A misspelt word of the trade must not pass for the nearest word of the contract, which may mean the contrary.
        return words.Keys.Where(w => EditDistance.Near(word, w)).OrderBy(w => EditDistance.Between(word, w))
            .Select(w => words[w]).FirstOrDefault() ?? [];
    }
}
