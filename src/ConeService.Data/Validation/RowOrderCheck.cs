namespace ConeService.Data;

/// <summary>
/// Rows stand in the order the table forces, so that two people who add the same rows write the same file.
/// A field that refers to another table sorts by that table's rows; numbers sort as numbers, blank first; other text by code point.
/// </summary>
internal static class RowOrderCheck
{
    public static void Run(MergedTable table, IReadOnlyDictionary<string, MergedTable> tables)
    {
        var order = table.Schema.RowOrder.Select(name => (Name: name, Compare: Comparison(table.Schema, name, tables))).ToList();
        foreach (var part in table.Parts)
        {
            for (var i = 1; i < part.Rows.Count; i++)
            {
                if (Misplaced(part.Rows[i - 1], part.Rows[i], order) is { } field)
                    part.Fault(part.Rows[i].Line, field, FaultRules.RowOrder,
                        $"is '{part.Rows[i].Cells[table.Schema.IndexOf(field)]}' and must stand before the row above; rows are ordered "
                        + $"by {string.Join(", ", table.Schema.RowOrder)}");
            }
        }
    }

    /// <summary>The field that puts the rows out of order, or null. A comparison without answer decides nothing.</summary>
    private static string? Misplaced(TableRow above, TableRow row, List<(string Name, Func<TableRow, TableRow, int?> Compare)> order)
    {
        foreach (var (name, compare) in order)
        {
            switch (compare(above, row))
            {
                case null or < 0: return null;
                case > 0: return name;
            }
        }

        return null;
    }

    private static Func<TableRow, TableRow,
        int?> Comparison(TableSchema schema, string name, IReadOnlyDictionary<string, MergedTable> tables)
    {
        var index = schema.IndexOf(name);
        if (schema.ForeignKeys.FirstOrDefault(k => k.Fields is [var only] && only == name) is { } key)
        {
            var target = tables[key.Table];
            var place = new Dictionary<string, int>(StringComparer.Ordinal);
            foreach (var (_, row) in target.Rows)
                place.TryAdd(row.Cells[target.Schema.IndexOf(key.References[0])], place.Count);
            return (a, b) => place.TryGetValue(a.Cells[index], out var first) && place.TryGetValue(b.Cells[index], out var second)
                ? first.CompareTo(second)
                : null;
        }

        if (schema.Fields[index].Type is FieldType.Number or FieldType.Integer)
            return (a, b) => Unread(a, index) || Unread(b, index) ? null : Nullable.Compare(Number(a, index), Number(b, index));
        return (a, b) => string.CompareOrdinal(a.Cells[index], b.Cells[index]);
    }

    // Said as a fault of the cell already.
    private static bool Unread(TableRow row, int index) => row.Values[index] is null && row.Cells[index].Length > 0;

    private static decimal? Number(TableRow row, int index) => row.Values[index] as decimal? ?? row.Values[index] as int?;
}
