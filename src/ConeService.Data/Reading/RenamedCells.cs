namespace ConeService.Data;

/// <summary>
/// Puts the ids of today into rows that were written with old ones: keys, references, what disagreements concern and
/// what corrections correct. Cells were checked and rows ordered as they were written; from here on only today's ids are met.
/// </summary>
internal static class RenamedCells
{
    public static void Rewrite(IReadOnlyDictionary<string, MergedTable> tables, IdRenames renames)
    {
        foreach (var table in tables.Values)
        {
            var fields = Fields(table.Schema, renames);
            foreach (var (_, row) in table.Rows)
            {
                foreach (var (name, current) in fields)
                    Rewrite(row, table.Schema.IndexOf(name), table.Schema, current);
            }
        }

        if (tables.TryGetValue(Corrections.TableName, out var corrections) && corrections.Sound)
            CorrectionKeys(corrections, tables, renames);
    }

    /// <summary>The fields of a table that hold ids, each with how an id in it becomes that of today.</summary>
    private static Dictionary<string, Func<string, string>> Fields(TableSchema schema, IdRenames renames)
    {
        var fields = new Dictionary<string, Func<string, string>>(StringComparer.Ordinal);
        if (schema.PrimaryKey is ["id"])
            fields["id"] = id => renames.Current(schema.Name, id);
        foreach (var key in schema.ForeignKeys.Where(k => k is { Fields.Count: 1, References: ["id"] }))
            fields[key.Fields[0]] = id => renames.Current(key.Table, id);
        foreach (var field in schema.Fields)
        {
            if (field.ItemReference is { Field: "id" } item)
                fields[field.Name] = id => renames.Current(item.Table, id);
        }

        if (schema.Name == TypedTables.Disagreements.Name && schema.IndexOf("concerns") >= 0)
            fields["concerns"] = concern =>
                concern.Split('/', 2) is [var table, var id] ? $"{table}/{renames.Current(table, id)}" : concern;
        return fields;
    }

    private static void Rewrite(TableRow row, int index, TableSchema schema, Func<string, string> current)
    {
        if (row.Values[index] is string id)
            row.Values[index] = row.Cells[index] = current(id);
        if (row.Values[index] is not string[] ids)
            return;
        // An old and a new id of one row may stand in one list.
        string[] now = [.. ids.Select(current).Distinct(StringComparer.Ordinal)];
        row.Values[index] = now;
        row.Cells[index] = string.Join(schema.Fields[index].Delimiter, now);
    }

    private static void CorrectionKeys(MergedTable corrections, IReadOnlyDictionary<string, MergedTable> tables, IdRenames renames)
    {
        var (table, key) = (corrections.Schema.IndexOf("table"), corrections.Schema.IndexOf("key"));
        foreach (var (_, row) in corrections.Rows)
        {
            if (!tables.TryGetValue(row.Cells[table], out var corrected))
                continue;
            var (fields, names) = (Fields(corrected.Schema, renames), corrected.Schema.PrimaryKey);
            var parts = row.Cells[key].Split('/');
            if (parts.Length != names.Count)
                continue;
            var now = parts.Select((p, i) => fields.TryGetValue(names[i], out var current) ? current(p) : p);
            row.Values[key] = row.Cells[key] = string.Join('/', now);
        }
    }
}
