namespace ConeService.Data;

/// <summary>Values and keys that may stand only once.</summary>
internal static class KeyChecks
{
    public static void Run(MergedTable table)
    {
        PrimaryKeys(table);
        for (var i = 0; i < table.Schema.Fields.Count; i++)
        {
            if (table.Schema.Fields[i].Constraints.Unique)
                Unique(table, i);
        }
    }

    private static void PrimaryKeys(MergedTable table)
    {
        var key = table.Schema.IndexesOf(table.Schema.PrimaryKey);
        var name = string.Join('/', table.Schema.PrimaryKey);
        var seen = new Dictionary<string, (TableData Part, TableRow Row)>(StringComparer.Ordinal);
        foreach (var (part, row) in table.Rows)
        {
            var text = row.Key(key);
            if (seen.TryAdd(text, (part, row)))
                continue;
            var first = seen[text];
            if (first.Part == part)
                part.Fault(row.Line, name, FaultRules.PrimaryKey,
                    $"is '{text}', the key of line {first.Row.Line} already; a key must stand once");
            else
                part.Fault(row.Line, name, FaultRules.OverlayOwnIds,
                    $"is '{text}', a key of the package {first.Part.Package} already; an overlay must use ids of its own");
        }
    }

    private static void Unique(MergedTable table, int index)
    {
        var seen = new Dictionary<string, TableRow>(StringComparer.Ordinal);
        foreach (var (part, row) in table.Rows.Where(r => r.Row.Cells[index].Length > 0))
        {
            if (!seen.TryAdd(row.Cells[index], row))
                part.Fault(row.Line, table.Schema.Fields[index].Name, FaultRules.Unique,
                    $"is '{row.Cells[index]}', which stands in line {seen[row.Cells[index]].Line} already; it must stand once");
        }
    }
}
