namespace ConeService.Data;

/// <summary>A wall conducts and weighs something; what is no wall leaves both blank; and the load's own material is there.</summary>
internal sealed class KilnMaterialRule : IPackageRule
{
    /// <summary>The material of ware and furniture.</summary>
    private const string Clay = "fired-clay";

    public IReadOnlyList<string> Reads => ["kiln-materials"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        if (!content.Has("kiln-materials"))
            yield break;
        var rows = content.Rows(TypedTables.KilnMaterials);
        if (!rows.Any(r => r.Row is { Id: Clay, Use: "load" }))
            yield return new PackageFault(content.Packages[0].Name, "kiln-materials.csv", null, "id", FaultRules.KilnMaterial,
                $"has no load '{Clay}'; the kiln model needs it");
        foreach (var at in rows)
        {
            var wall = at.Row.Use == "wall";
            (string Field, decimal? Value)[] cells =
            [
                ("density_kilograms_per_cubic_metre", at.Row.DensityKilogramsPerCubicMetre),
                ("conductivity_constant", at.Row.ConductivityConstant),
                ("conductivity_slope", at.Row.ConductivitySlope), ("conductivity_square", at.Row.ConductivitySquare),
            ];
            foreach (var (field, value) in cells)
            {
                if (wall != value is not null)
                    yield return at.Fault(field, FaultRules.KilnMaterial,
                        wall ? "is blank; a wall needs it" : "is given; only a wall has one");
            }

            if (at.Row.ConductivityConstant == 0)
                yield return at.Fault("conductivity_constant", FaultRules.KilnMaterial,
                    "is 0; a wall that does not conduct at 0 °C does not exist");
        }
    }
}
