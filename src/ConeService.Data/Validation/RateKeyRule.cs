namespace ConeService.Data;

/// <summary>
/// The rate of an end point stands twice: as a number, blank where the chart states none, and as a part of the key, which has no blanks
/// since many programs refuse or forget a key that has.
/// </summary>
internal sealed class RateKeyRule : IPackageRule
{
    private const string Rate = "rate_celsius_per_hour";
    private const string Key = "rate";
    private const string Unstated = "unstated";

    public IReadOnlyList<string> Reads => [TypedTables.EndPoints.Name];

    /// <summary>The part of the key, from the other cells of a row.</summary>
    public static string KeyOf(Func<string, string> cell) => cell(Rate) is { Length: > 0 } rate ? rate : Unstated;

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var table = content.Tables[TypedTables.EndPoints.Name];
        var (rate, key) = (table.Schema.IndexOf(Rate), table.Schema.IndexOf(Key));
        foreach (var (part, row) in table.Rows)
        {
            var expected = KeyOf(_ => row.Cells[rate]);
            if (row.Cells[key] != expected)
            {
                yield return new(part.Package, part.Schema.Path, row.Line, Key, FaultRules.RateKey,
                    $"is {row.Cells[key]}; beside {Rate} {(row.Cells[rate].Length > 0 ? row.Cells[rate] : "blank")} it must be {expected}");
            }
        }
    }
}
