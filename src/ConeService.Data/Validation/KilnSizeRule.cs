namespace ConeService.Data;

/// <summary>Each heat has a row from 0 L, so that every kiln finds one, and its wall is a wall.</summary>
internal sealed class KilnSizeRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["kiln-materials", "kiln-sizes"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        if (!content.Has("kiln-sizes"))
            yield break;
        var rows = content.Rows(TypedTables.KilnSizes);
        foreach (var heat in new[] { "electric", "gas" })
        {
            if (!rows.Any(r => r.Row.Heat == heat && r.Row.FromLitres == 0))
                yield return new PackageFault(content.Packages[0].Name, "kiln-sizes.csv", null, "from_litres", FaultRules.KilnSize,
                    $"has no row from 0 L for {heat}; the smallest kilns need it");
        }

        var walls = content.Rows(TypedTables.KilnMaterials).Where(m => m.Row.Use == "wall").Select(m => m.Row.Id)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var at in rows.Where(r => !walls.Contains(r.Row.WallMaterial)))
            yield return at.Fault("wall_material", FaultRules.KilnSize,
                $"is '{at.Row.WallMaterial}', which kiln-materials does not list as a wall");
    }
}
