using System.Collections.Frozen;
using ConeService.Contract.Study;

namespace ConeService.Firing.Study.Searching;

/// <summary>One thing that can be found, with its words.</summary>
internal sealed class SearchDocument
{
    private readonly FrozenSet<string> nameWords;
    private readonly FrozenSet<string> otherNames;
    private readonly FrozenSet<string> textWords;

    /// <summary>Takes the words of a thing.</summary>
    /// <param name="hit">How it is answered.</param>
    /// <param name="weight">How much sooner its list is told than another of the same words.</param>
    /// <param name="synonyms">Other names of it.</param>
    /// <param name="texts">What is said of it.</param>
    public SearchDocument(SearchHit hit, double weight, IEnumerable<string> synonyms, IEnumerable<string?> texts)
    {
        (Hit, Weight) = (hit, weight);
        string[] names = [hit.Name, hit.Id.Replace('-', ' '), .. synonyms];
        Names = [.. names.Select(SearchWords.Of).Where(n => n.Count > 0)];
        Called = [.. names.Select(n => n.ToLowerInvariant()).Distinct(StringComparer.Ordinal)];
        nameWords = SearchWords.Of(hit.Name).ToFrozenSet(StringComparer.Ordinal);
        otherNames = Names.SelectMany(n => n).ToFrozenSet(StringComparer.Ordinal);
        textWords = texts.Append(hit.Text).SelectMany(SearchWords.Of).ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>How it is answered.</summary>
    public SearchHit Hit { get; }

    /// <summary>How much sooner its list is told.</summary>
    public double Weight { get; }

    /// <summary>Its names, each as the words that are searched by.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Names { get; }

    /// <summary>Its names as they are written, in small letters.</summary>
    public IReadOnlyList<string> Called { get; }

    /// <summary>Every word that it has.</summary>
    public IEnumerable<string> Words => otherNames.Union(textWords);

    /// <summary>How much a word of the question speaks for it: most in its name, less in another name, little in a text; 0 when it has
    /// it nowhere.</summary>
    public double Strength(string word) => nameWords.Contains(word) ? 10 : otherNames.Contains(word) ? 8 : textWords.Contains(word) ? 2 : 0;
}
