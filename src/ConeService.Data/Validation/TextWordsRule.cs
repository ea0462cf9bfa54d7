using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>
/// A text promises nobody that nothing can happen, and has neither ids nor the shorthand of the archive in it: it says “one printed
/// source”, not where a row was seen.
/// </summary>
internal sealed partial class TextWordsRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["texts", "sources", "disagreements", "temperature-limits", "colour-rules", .. TextRowRule.Told];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        if (!content.Has("texts")) yield break;
        var ids = Reads.Skip(1).SelectMany(t => content.Tables[t].Rows
                .Select(r => r.Row.Key(content.Tables[t].Schema.IndexesOf(content.Tables[t].Schema.PrimaryKey))))
            .Where(id => id.Contains('-', StringComparison.Ordinal)).ToHashSet(StringComparer.Ordinal);
        foreach (var at in content.Rows(TypedTables.Texts))
        {
            if (Promise().Match(at.Row.Text) is { Success: true } promise)
                yield return at.Fault("text", FaultRules.TextWords, $"says '{promise.Value}'; nothing is ever called that");
            if (Shorthand().Match(at.Row.Text) is { Success: true } shorthand)
                yield return at.Fault("text", FaultRules.TextWords,
                    $"says '{shorthand.Value}', which tells a student nothing; say 'one printed source' or 'from memory'");
            if (Hyphenated().Matches(at.Row.Text).Select(m => m.Value).FirstOrDefault(ids.Contains) is { } id)
                yield return at.Fault("text", FaultRules.TextWords, $"has the id '{id}'; say it in words");
            if (at.Row.Text.AsSpan().ContainsAny('{', '}'))
                yield return at.Fault("text", FaultRules.TextWords, "has a brace; texts take no parameters");
        }
    }

    [GeneratedRegex(@"\b(safe(ly|r|st|ty)?|harmless(ly)?|non-?toxic|risk-free|foolproof)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Promise();

    [GeneratedRegex(@"\b(seen (once|twice|in|via)|from-memory|common-practice|sourced_fields|ibid|op\. cit)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Shorthand();

    [GeneratedRegex("[a-z0-9]+(-[a-z0-9]+)+")]
    private static partial Regex Hyphenated();
}
