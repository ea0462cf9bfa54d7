namespace ConeService.Data;

/// <summary>What a disagreement concerns is a row that is there, written as table/id.</summary>
internal sealed class DisagreementConcernsRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["disagreements"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var known = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var at in content.Rows(TypedTables.Disagreements))
        {
            foreach (var concern in at.Row.Concerns)
            {
                var parts = concern.Split('/', 2);
                if (parts is not [var table, var id] || !content.Tables.TryGetValue(table, out var merged))
                    yield return at.Fault("concerns", FaultRules.DisagreementConcerns,
                        $"names '{concern}'; it must be a table and a key of it, as table/id");
                else if (!Keys(table, merged).Contains(id))
                    yield return at.Fault("concerns", FaultRules.DisagreementConcerns, $"names '{id}', which is no row of {table}");
            }
        }

        HashSet<string> Keys(string table, MergedTable merged)
        {
            if (!known.TryGetValue(table, out var keys))
                known[table] = keys = merged.Rows.Select(r => r.Row.Key(merged.Schema.IndexesOf(merged.Schema.PrimaryKey)))
                    .ToHashSet(StringComparer.Ordinal);
            return keys;
        }
    }
}
