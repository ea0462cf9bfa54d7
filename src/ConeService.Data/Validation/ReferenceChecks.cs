namespace ConeService.Data;

/// <summary>Foreign keys and the items of lists must name rows that are there, in the base package or an overlay.</summary>
internal static class ReferenceChecks
{
    public static void Run(MergedTable table, IReadOnlyDictionary<string, MergedTable> tables)
    {
        foreach (var key in table.Schema.ForeignKeys)
            ForeignKey(table, key, tables[key.Table]);
        for (var i = 0; i < table.Schema.Fields.Count; i++)
        {
            if (table.Schema.Fields[i].ItemReference is { } reference)
                Items(table, i, reference, tables[reference.Table]);
        }
    }

    private static void ForeignKey(MergedTable table, ForeignKey key, MergedTable target)
    {
        // Rows that could not be read would make every reference to them look broken.
        if (!target.Complete)
            return;
        var fields = table.Schema.IndexesOf(key.Fields);
        var known = Known(target, target.Schema.IndexesOf(key.References));
        var name = string.Join('/', key.Fields);
        foreach (var (part, row) in table.Rows)
        {
            if (fields.All(f => row.Cells[f].Length > 0) && !known.Contains(row.Key(fields)))
                part.Fault(row.Line, name, FaultRules.ForeignKey,
                    $"is '{row.Key(fields)}'; it must be {string.Join('/', key.References)} of a row of {key.Table}");
        }
    }

    private static void Items(MergedTable table, int index, ItemReference reference, MergedTable target)
    {
        if (!target.Complete)
            return;
        var known = Known(target, [target.Schema.IndexOf(reference.Field)]);
        foreach (var (part, row) in table.Rows)
        {
            foreach (var item in (row.Values[index] as string[] ?? []).Where(i => !known.Contains(i)))
                part.Fault(row.Line, table.Schema.Fields[index].Name, FaultRules.ItemReference,
                    $"names '{item}'; each item must be {reference.Field} of a row of {reference.Table}");
        }
    }

    private static HashSet<string> Known(MergedTable target, int[] fields) =>
        target.Rows.Select(r => r.Row.Key(fields)).ToHashSet(StringComparer.Ordinal);
}
