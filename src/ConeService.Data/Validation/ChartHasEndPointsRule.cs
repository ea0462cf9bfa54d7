namespace ConeService.Data;

/// <summary>A chart is its printed cells: one without any has nothing to answer from.</summary>
internal sealed class ChartHasEndPointsRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["charts", "end-points"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var printed = content.Rows(TypedTables.EndPoints).Select(e => e.Row.Chart).ToHashSet(StringComparer.Ordinal);
        return content.Rows(TypedTables.Charts)
            .Where(c => !printed.Contains(c.Row.Id))
            .Select(c => c.Fault("id", FaultRules.ChartHasEndPoints,
                $"is '{c.Row.Id}', of which end-points has no row; a chart needs at least one"));
    }
}
