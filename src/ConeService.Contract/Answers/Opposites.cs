namespace ConeService.Contract.Answers;

/// <summary>Words that differ by a few letters, or by one word of several, and mean the contrary.</summary>
internal static class Opposites
{
    private static readonly (string One, string Other)[] Pairs =
    [
        ("raw", "fired"), ("raw", "bisqued"), ("raw", "calcined"), ("wet", "dry"), ("hot", "cold"), ("high", "low"), ("over", "under"),
        ("above", "below"), ("overglaze", "underglaze"), ("overfired", "underfired"), ("oxidation", "reduction"), ("acid", "alkaline"),
        ("light", "dark"), ("gloss", "matt"), ("large", "small"), ("fast", "slow"), ("with", "without"), ("heating", "cooling"),
        ("min", "max"), ("first", "last"), ("single", "double"), ("inside", "outside"), ("up", "down"), ("before", "after"),
    ];

    private static readonly string[] Negations = ["un", "in", "non", "no", "de", "dis"];

    /// <summary>True when one of the words sent is the contrary of one of the candidate's.</summary>
    public static bool Between(IEnumerable<string> sent, IReadOnlyCollection<string> candidate) =>
        sent.Any(s => !candidate.Contains(s) && candidate.Any(c => Contrary(s, c)));

    private static bool Contrary(string sent, string candidate) =>
        Pairs.Any(p => (candidate == p.Other && Means(sent, p.One, p.Other)) || (candidate == p.One && Means(sent, p.Other, p.One)))
        || Negations.Any(n => Negates(sent, candidate, n) || Negates(candidate, sent, n));

    // A misspelt “overglase” still means overglaze and not its contrary.
    private static bool Means(string sent, string word, string contrary) =>
        sent == word || (EditDistance.Near(sent, word) && EditDistance.Between(sent, word) < EditDistance.Between(sent, contrary));

    private static bool Negates(string longer, string shorter, string negation) =>
        longer.Length > negation.Length + 2 && longer.StartsWith(negation, StringComparison.Ordinal)
        && !shorter.StartsWith(negation, StringComparison.Ordinal) && EditDistance.Near(longer[negation.Length..], shorter);
}
