namespace ConeService.Firing.Loads;

/// <summary>Small matters of grammar.</summary>
internal static class Sentences
{
    /// <summary>a or an before the name; by its first letter, which is right for every word of the tables.</summary>
    public static string WithArticle(string name) => ("aeiou".Contains(name[0], StringComparison.Ordinal) ? "an " : "a ") + name;

    /// <summary>For the beginning of a sentence.</summary>
    public static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>For the middle of one.</summary>
    public static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
