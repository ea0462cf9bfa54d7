namespace ConeService.Data;

/// <summary>A source nobody has seen cannot make a row published or corroborated.</summary>
internal sealed class UnseenSourceRule : IPackageRule
{
    private static readonly string[] Allowed = ["from-memory", "common-practice", "derived", "estimate"];

    public IReadOnlyList<string> Reads => ["sources"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var unseen = content.Rows(TypedTables.Sources).Where(s => s.Row.Seen == "no").Select(s => s.Row.Id)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var (at, sources) in CitedRows.Of(content))
        {
            if (sources.All(unseen.Contains) && !Allowed.Contains(at.Row))
                yield return at.Fault(CitedRows.Confidence, FaultRules.UnseenSource,
                    $"is '{at.Row}', but {string.Join(", ", sources)} was not seen; it must be one of {string.Join(", ", Allowed)}");
        }
    }
}
