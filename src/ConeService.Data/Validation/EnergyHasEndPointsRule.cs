namespace ConeService.Data;

/// <summary>A slope needs two points that rise: an energy must come from end points at two rates, hotter at the faster one.</summary>
internal sealed class EnergyHasEndPointsRule : IPackageRule
{
    private const int Needed = 2;

    public IReadOnlyList<string> Reads => ["bending-energies", "end-points"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var points = content.Rows(TypedTables.EndPoints)
            .Select(e => e.Row)
            .Where(e => e.RateCelsiusPerHour is not null)
            .ToLookup(e => (e.Chart, e.Cone));
        foreach (var at in content.Rows(TypedTables.BendingEnergies))
        {
            var printed = points[(at.Row.Chart, at.Row.Cone)].OrderBy(e => e.RateCelsiusPerHour).ToList();
            if (printed.Count < Needed)
                yield return at.Fault("cone", FaultRules.EnergyHasEndPoints,
                    $"is '{at.Row.Cone}', of which {at.Row.Chart} has {printed.Count} end points with a rate; a slope needs at least "
                    + $"{Needed}");
            // Without a note the fall is a fault of the end points already.
            else if (printed.Zip(printed.Skip(1))
                .Any(pair => pair.Second.Celsius <= pair.First.Celsius && (pair.First.Note ?? pair.Second.Note) is not null))
                yield return at.Fault("cone", FaultRules.EnergyHasEndPoints,
                    $"is '{at.Row.Cone}', whose end points on {at.Row.Chart} do not rise with the rate; a noted oddity can stay as "
                    + $"printed, but no slope can be fitted to it");
        }
    }
}
