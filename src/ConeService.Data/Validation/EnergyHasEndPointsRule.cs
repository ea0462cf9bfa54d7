namespace ConeService.Data;

/// <summary>A slope needs two points: an energy must come from at least two end points with rates.</summary>
internal sealed class EnergyHasEndPointsRule : IPackageRule
{
    private const int Needed = 2;

    public IReadOnlyList<string> Reads => ["bending-energies", "end-points"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var points = content.Rows(TypedTables.EndPoints)
            .Where(e => e.Row.RateCelsiusPerHour is not null)
            .CountBy(e => (e.Row.Chart, e.Row.Cone))
            .ToDictionary();
        foreach (var at in content.Rows(TypedTables.BendingEnergies))
        {
            var count = points.GetValueOrDefault((at.Row.Chart, at.Row.Cone));
            if (count < Needed)
                yield return at.Fault("cone", FaultRules.EnergyHasEndPoints, $"is '{at.Row.Cone}', of which {at.Row.Chart} has {count} end points with a rate; a slope needs at least {Needed}");
        }
    }
}
