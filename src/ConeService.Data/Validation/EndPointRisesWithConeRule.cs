namespace ConeService.Data;

/// <summary>In one column of a chart, each cone goes down hotter than the one before it.</summary>
internal sealed class EndPointRisesWithConeRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["end-points", "cones"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var order = content.ConeOrder();
        return content.Rows(TypedTables.EndPoints)
            .GroupBy(e => (e.Row.Chart, e.Row.RateCelsiusPerHour))
            .SelectMany(g => RisingEndPoints.Check(
                g.OrderBy(e => order[e.Row.Cone]), FaultRules.EndPointRisesWithCone, e => $"cone {e.Cone}"));
    }
}
