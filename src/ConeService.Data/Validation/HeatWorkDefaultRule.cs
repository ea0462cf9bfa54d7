namespace ConeService.Data;

/// <summary>Every default that a heat-work answer may need is there, in the unit it is read in.</summary>
internal sealed class HeatWorkDefaultRule : IPackageRule
{
    private static readonly (string Id, string Unit)[] Needed =
    [
        ("cone-sigma", "K"), ("drift-base-metal", "K"), ("drift-cap", "K"), ("drift-from", "°C"), ("drift-noble-metal", "K"),
        ("energy-log-sigma", "1"), ("full-speed-rate", "K/h"), ("gradient-sigma", "K"), ("room", "°C"),
    ];

    public IReadOnlyList<string> Reads => ["heat-work-defaults"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        if (!content.Has("heat-work-defaults"))
            yield break;
        var rows = content.Rows(TypedTables.HeatWorkDefaults).ToDictionary(r => r.Row.Id, StringComparer.Ordinal);
        foreach (var (id, unit) in Needed)
        {
            if (!rows.TryGetValue(id, out var at))
                yield return new PackageFault(content.Packages[0].Name, "heat-work-defaults.csv", null, "id", FaultRules.HeatWorkDefault,
                    $"has no row '{id}'; the service needs it");
            else if (at.Row.Unit != unit)
                yield return at.Fault("unit", FaultRules.HeatWorkDefault, $"is '{at.Row.Unit}'; {id} is read in {unit}");
        }
    }
}
