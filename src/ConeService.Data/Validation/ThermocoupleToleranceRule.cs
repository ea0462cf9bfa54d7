namespace ConeService.Data;

/// <summary>
/// A tolerance has a range that runs upwards, a class of its own standard, and a point where its share begins only if its formula
/// has one.
/// </summary>
internal sealed class ThermocoupleToleranceRule : IPackageRule
{
    private static readonly Dictionary<string,
        string[]> Classes = new(StringComparer.Ordinal) { ["iec-60584"] = ["1", "2"], ["astm-e230"] = ["special", "standard"] };

    public IReadOnlyList<string> Reads => ["thermocouple-tolerances"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        foreach (var at in content.Rows(TypedTables.ThermocoupleTolerances))
        {
            var row = at.Row;
            if (row.HighestCelsius <= row.LowestCelsius)
                yield return at.Fault("highest_celsius", FaultRules.ThermocoupleTolerance,
                    $"is {row.HighestCelsius}, not above the lowest, {row.LowestCelsius}");
            if (row.Formula == "beyond" != row.FromCelsius is not null)
                yield return at.Fault("from_celsius", FaultRules.ThermocoupleTolerance,
                    $"must be given with formula beyond and with no other; the formula is {row.Formula}");
            if (Classes.TryGetValue(row.Standard, out var classes) && !classes.Contains(row.Class))
                yield return at.Fault("class", FaultRules.ThermocoupleTolerance,
                    $"is '{row.Class}'; {row.Standard} has {string.Join(", ", classes)}");
        }
    }
}
