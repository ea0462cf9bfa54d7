namespace ConeService.Data;

/// <summary>A published chart stays what was published: an overlay adds cells and energies to its own charts only.</summary>
internal sealed class OverlayOwnChartRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["charts", "end-points", "bending-energies"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var owner = content.Rows(TypedTables.Charts).ToDictionary(c => c.Row.Id, c => c.Package, StringComparer.Ordinal);
        return Check(content, owner, content.Rows(TypedTables.EndPoints), e => e.Chart)
            .Concat(Check(content, owner, content.Rows(TypedTables.BendingEnergies), e => e.Chart));
    }

    private static IEnumerable<PackageFault> Check<T>(PackageContent content, Dictionary<string, string> owner,
        IEnumerable<Located<T>> rows, Func<T, string> chart) =>
        from at in rows
        where at.Package != content.Packages[0].Name && owner[chart(at.Row)] != at.Package
        select at.Fault("chart", FaultRules.OverlayOwnChart,
            $"is '{chart(at.Row)}', a chart of the package {owner[chart(at.Row)]}; it must be a chart of this overlay");
}
