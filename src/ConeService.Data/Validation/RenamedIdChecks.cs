namespace ConeService.Data;

/// <summary>An old id is gone from its table and the new one is there, so that no renaming leads to another.</summary>
internal static class RenamedIdChecks
{
    /// <summary>Judges the rows as they were written, before old ids are put right.</summary>
    public static void Run(IReadOnlyDictionary<string, MergedTable> tables)
    {
        if (!tables.TryGetValue(TypedTables.RenamedIds.Name, out var renamed) || !renamed.Sound)
            return;
        int At(string field) => renamed.Schema.IndexOf(field);
        var (name, old, current) = (At("table"), At("old"), At("new"));
        var ids = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var (part, row) in renamed.Rows.ToList())
        {
            if (!tables.TryGetValue(row.Cells[name], out var table) || table.Schema.PrimaryKey is not ["id"])
            {
                Fault(part, row, "table", $"is '{row.Cells[name]}'; it must be a table of this package whose key is id");
                continue;
            }

            if (!table.Complete)
                continue;
            if (!ids.TryGetValue(table.Schema.Name, out var present))
                ids[table.Schema.Name] = present = [.. table.Rows.Select(r => r.Row.Cells[table.Schema.IndexOf("id")])];
            if (present.Contains(row.Cells[old]))
                Fault(part, row, "old", $"is '{row.Cells[old]}', which is still the id of a row of {table.Schema.Name}");
            if (!present.Contains(row.Cells[current]))
                Fault(part, row, "new", $"is '{row.Cells[current]}', which is no row of {table.Schema.Name}; name the id the row has now");
        }
    }

    private static void Fault(TableData part, TableRow row, string field, string reason) =>
        part.Fault(row.Line, field, FaultRules.RenamedIds, reason);
}
