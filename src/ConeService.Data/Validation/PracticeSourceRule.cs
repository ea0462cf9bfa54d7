namespace ConeService.Data;

/// <summary>The practice of the trade alone is no publication.</summary>
internal sealed class PracticeSourceRule : IPackageRule
{
    private const string Practice = "common-practice";
    private static readonly string[] Allowed = ["common-practice", "estimate"];

    public IReadOnlyList<string> Reads => [];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        foreach (var (at, sources) in CitedRows.Of(content))
        {
            if (sources.All(s => s == Practice) && !Allowed.Contains(at.Row))
                yield return at.Fault(CitedRows.Confidence, FaultRules.PracticeSource,
                    $"is '{at.Row}', but the only source is {Practice}; it must be one of {string.Join(", ", Allowed)}");
        }
    }
}
