namespace ConeService.Data;

/// <summary>
/// Replaces printed values by adopted ones, in the text of the cells: everything that is checked later,
/// types and constraints included, is checked on the value that will be used.
/// </summary>
internal static class Corrections
{
    public const string TableName = "corrections";
    public const string Adopted = "adopted";

    public static void Apply(IReadOnlyDictionary<string, MergedTable> tables)
    {
        if (!tables.TryGetValue(TableName, out var merged))
            return;
        var fields = merged.Schema.IndexesOf(["table", "key", "field", "printed", Adopted]);
        if (fields.Contains(-1))
            return; // said as table-fields
        foreach (var (part, row) in merged.Rows)
        {
            if (fields.Select(f => row.Cells[f]).ToArray() is [var table, var key, var field, var printed, var adopted])
                Apply(tables, part, row, (table, key, field, printed, adopted));
        }
    }

    private static void Apply(
        IReadOnlyDictionary<string, MergedTable> tables, TableData part, TableRow row,
        (string Table, string Key, string Field, string Printed, string Adopted) correction)
    {
        void Fault(string field, string reason) => part.Fault(row.Line, field, FaultRules.CorrectionMatches, reason);

        if (!tables.TryGetValue(correction.Table, out var table) || correction.Table == TableName)
        {
            // A table outside the list allowed is said by the constraint of the field.
            if (part.Schema.Fields[part.Schema.IndexOf("table")].Constraints.Enum?.Contains(correction.Table) != false)
                Fault("table", $"is '{correction.Table}'; it must be a table of this package, other than {TableName}");
            return;
        }

        var key = table.Schema.IndexesOf(table.Schema.PrimaryKey);
        var index = table.Schema.IndexOf(correction.Field);
        if (index < 0)
        {
            Fault("field", $"is '{correction.Field}'; it must be a field of {correction.Table}");
            return;
        }

        if (key.Contains(index))
        {
            Fault("field", $"is '{correction.Field}', part of the key; keys are never renumbered, so they cannot be corrected");
            return;
        }

        // A correction that was written before a column came into the key names the row by the key of then.
        var earlier = TypedTables.Find(correction.Table) is { } typed ? table.Schema.IndexesOf(typed.EarlierKey) : key;
        var target = Row(key) ?? (earlier.Contains(-1) ? null : Row(earlier));
        if (target is null)
        {
            if (table.Complete)
                Fault("key", $"is '{correction.Key}'; no row of {correction.Table} has this key");
        }
        else if (target.Cells[index] != correction.Printed)
        {
            Fault("printed", $"is '{correction.Printed}'; the table has '{target.Cells[index]}'");
        }
        else
        {
            target.Correct(index, correction.Adopted, part, row.Line);
        }

        // Most rows are none by the first part of their key, before the whole of it is put together.
        TableRow? Row(int[] by) => table.Rows.Select(r => r.Row).FirstOrDefault(r =>
            correction.Key.StartsWith(r.Cells[by[0]], StringComparison.Ordinal) && r.Key(by) == correction.Key);
    }
}
