namespace ConeService.Data;

/// <summary>
/// Corroborated means two independent witnesses: two sources that were seen and do not go back to one print or author. Practice,
/// memory and arithmetic are no witnesses, and two copies of one print are one.
/// </summary>
internal sealed class WitnessRule : IPackageRule
{
    public IReadOnlyList<string> Reads => [TypedTables.Sources.Name];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var witnesses = content.Rows(TypedTables.Sources).Where(s => s.Row.Seen is "whole" or "in-part")
            .ToDictionary(s => s.Row.Id, s => s.Row.Witness ?? s.Row.Id, StringComparer.Ordinal);
        foreach (var row in EvidencedRows.Of(content).Where(r => r.Confidence == Confidence.Corroborated))
        {
            var found = row.Sources.Select(s => witnesses.GetValueOrDefault(s)).OfType<string>().Distinct(StringComparer.Ordinal).Count();
            if (found < 2)
                yield return row.Fault(CitedRows.Confidence, FaultRules.Witnesses,
                    $"is 'corroborated', but {string.Join(", ", row.Sources)} {(found == 0 ? "is no witness" : "is one witness")}; two "
                    + "that do not go back to one print are needed");
        }
    }
}
