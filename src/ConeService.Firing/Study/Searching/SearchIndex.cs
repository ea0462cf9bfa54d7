using System.Collections.Frozen;
using ConeService.Contract.Study;
using ConeService.Data;

namespace ConeService.Firing.Study.Searching;

/// <summary>Finds things by everyday words. Immutable.</summary>
internal sealed class SearchIndex
{
    // Of what was asked, weighed by how seldom each word is, a hit must be about this much; else it would be about something else.
    private const double LeastShare = 0.67;
    private const double SlightShare = 0.2;
    private const double WholeName = 100;
    private const double NameWithin = 25;

    // Names that differ by a slip: one letter in four, and never the first, by which people begin a word rightly.
    private const int LettersPerSlip = 4;
    private const int MostSlips = 2;
    private const int MostProbable = 3;

    private readonly IReadOnlyList<SearchDocument> documents;
    private readonly FrozenDictionary<string, double> rarity;

    /// <summary>Takes in a data package.</summary>
    public SearchIndex(Dataset data)
    {
        documents = [.. SearchDocuments.Of(data)];
        rarity = documents.SelectMany(d => d.Words).GroupBy(w => w, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => Rarity(g.Count()), StringComparer.Ordinal);
    }

    /// <summary>Whether some thing has the word.</summary>
    public bool Knows(string stem) => rarity.ContainsKey(stem);

    /// <summary>What is about the words, the likeliest first.</summary>
    /// <param name="words">Words as <see cref="SearchWords.Of"/> makes them.</param>
    public IReadOnlyList<SearchHit> Find(IReadOnlyList<string> words)
    {
        string[] asked = [.. words.Distinct(StringComparer.Ordinal)];
        if (asked.Length == 0) return [];
        var whole = asked.Sum(Weight);
        return [.. documents
            .Select(d => (d.Hit, Score: Score(d, words, asked, whole)))
            .Where(x => x.Score > 0)
            .OrderByDescending(x => x.Score)
            .ThenBy(x => x.Hit.List, StringComparer.Ordinal)
            .ThenBy(x => x.Hit.Id, StringComparer.Ordinal)
            .Select(x => x.Hit)];
    }

    /// <summary>Names that differ from what was asked by a slip of the pen only.</summary>
    public IReadOnlyList<string> Probably(string asked)
    {
        var text = string.Join(' ', SearchWords.Split(asked));
        if (text.Length <= LettersPerSlip) return [];
        return [.. documents
            .SelectMany(d => d.Called)
            .Distinct(StringComparer.Ordinal)
            .Where(n => n.Length > 0 && n[0] == text[0] && Math.Abs(n.Length - text.Length) <= MostSlips)
            .Select(n => (Name: n, Wrong: Contract.Answers.EditDistance.Between(text, n)))
            .Where(x => x.Wrong <= Math.Min(MostSlips, text.Length / LettersPerSlip))
            .OrderBy(x => x.Wrong).ThenBy(x => x.Name, StringComparer.Ordinal)
            .Take(MostProbable)
            .Select(x => x.Name)];
    }

    private double Score(SearchDocument document, IReadOnlyList<string> words, string[] asked, double whole)
    {
        var (met, score) = (0d, 0d);
        foreach (var word in asked)
        {
            if (document.Strength(word) is not (> 0 and var strength)) continue;
            met += Weight(word);
            score += strength * Weight(word);
        }

        if (met < whole * LeastShare) return 0;
        foreach (var name in document.Names)
        {
            if (name.Count == words.Count && name.SequenceEqual(words)) score += WholeName;
            else if (name.All(words.Contains)) score += NameWithin * name.Count;
        }

        return score * document.Weight * met / whole;
    }

    // A word that stands nowhere weighs most: what was asked is then about something that is not here.
    private double Weight(string word) => rarity.GetValueOrDefault(word, Rarity(0)) * (SearchWords.IsSlight(word) ? SlightShare : 1);

    private double Rarity(int times) => Math.Log(1 + ((double)documents.Count / (times + 1)));
}
