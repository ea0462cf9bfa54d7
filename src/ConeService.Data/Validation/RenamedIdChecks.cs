namespace ConeService.Data;

/// <summary>An old id is gone from its table and the new one is there, so that no renaming leads to another.</summary>
internal static class RenamedIdChecks
{
    /// <summary>Judges the rows as they were written, before old ids are put right.</summary>
    public static void Run(IReadOnlyDictionary<string, MergedTable> tables)
    {
        if (!tables.TryGetValue(TypedTables.RenamedIds.Name, out var renamed) || !renamed.Sound)
            return;
        var (name, old, current) = (renamed.Schema.IndexOf("table"), renamed.Schema.IndexOf("old"), renamed.Schema.IndexOf("new"));
        var ids = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var (part, row) in renamed.Rows.ToList())
        {
            if (!tables.TryGetValue(row.Cells[name], out var table) || table.Schema.PrimaryKey is not ["id"])
            {
                part.Fault(row.Line, "table", FaultRules.RenamedIds, $"is '{row.Cells[name]}'; it must be a table of this package whose key is id");
                continue;
            }

            if (!table.Complete)
                continue;
            if (!ids.TryGetValue(table.Schema.Name, out var present))
                ids[table.Schema.Name] = present = table.Rows.Select(r => r.Row.Cells[table.Schema.IndexOf("id")]).ToHashSet(StringComparer.Ordinal);
            if (present.Contains(row.Cells[old]))
                part.Fault(row.Line, "old", FaultRules.RenamedIds, $"is '{row.Cells[old]}', which is still the id of a row of {table.Schema.Name}");
            if (!present.Contains(row.Cells[current]))
                part.Fault(row.Line, "new", FaultRules.RenamedIds, $"is '{row.Cells[current]}', which is no row of {table.Schema.Name}; name the id the row has now");
        }
    }
}
