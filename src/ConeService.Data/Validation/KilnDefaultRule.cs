namespace ConeService.Data;

/// <summary>Every default that the kiln model may need is there, in the unit it is read in, above 0, and spans run upwards.</summary>
internal sealed class KilnDefaultRule : IPackageRule
{
    private static readonly (string Id, string Unit)[] Needed =
    [
        ("air-heat", "J/(kg K)"), ("bisqued-water", "1"), ("bone-dry-water", "1"), ("chamber-capacity", "J/(K m2)"),
        ("dehydroxylation-from", "°C"), ("dehydroxylation-heat", "kJ/kg"), ("dehydroxylation-to", "°C"),
        ("element-firings", "1"), ("element-rise", "1"), ("exchange-area", "1"), ("exchange-convection", "W/(m2 K)"),
        ("exchange-emissivity", "1"), ("flue-loss", "1/K"), ("flue-loss-slope", "1/K2"), ("fuel-factor-high", "1"),
        ("fuel-factor-low", "1"), ("furniture-density", "kg/L"), ("green-clay-diffusivity", "m2/s"), ("inside-shape", "1"),
        ("kaolinite-water", "1"), ("latent-heat", "kJ/kg"), ("latent-heat-slope", "kJ/(kg K)"), ("leak", "kg/(s m2)"),
        ("leather-hard-water", "1"), ("surface-convection", "W/(m2 K^(4/3))"), ("surface-emissivity", "1"), ("wall-edge", "1"),
        ("ware-density", "kg/L"), ("water-from", "°C"), ("water-heat", "kJ/kg"), ("water-to", "°C"), ("wet-water", "1"),
    ];

    public IReadOnlyList<string> Reads => ["kiln-defaults"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        if (!content.Has("kiln-defaults"))
            yield break;
        var rows = content.Rows(TypedTables.KilnDefaults).ToDictionary(r => r.Row.Id, StringComparer.Ordinal);
        foreach (var (id, unit) in Needed)
        {
            if (!rows.TryGetValue(id, out var at))
                yield return new PackageFault(content.Packages[0].Name, "kiln-defaults.csv", null, "id", FaultRules.KilnDefault,
                    $"has no row '{id}'; the kiln model needs it");
            else if (at.Row.Unit != unit)
                yield return at.Fault("unit", FaultRules.KilnDefault, $"is '{at.Row.Unit}'; {id} is read in {unit}");
            else if (at.Row.Value <= 0)
                yield return at.Fault("value", FaultRules.KilnDefault, $"is {at.Row.Value}; {id} must be above 0");
        }

        foreach (var what in new[] { "dehydroxylation", "fuel-factor", "water" })
        {
            var (low, high) = what == "fuel-factor" ? (what + "-low", what + "-high") : (what + "-from", what + "-to");
            if (rows.TryGetValue(low, out var from) && rows.TryGetValue(high, out var to) && from.Row.Value >= to.Row.Value)
                yield return to.Fault("value", FaultRules.KilnDefault, $"is {to.Row.Value}; {high} must be above {low}, {from.Row.Value}");
        }
    }
}
