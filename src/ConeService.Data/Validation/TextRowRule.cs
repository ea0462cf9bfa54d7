namespace ConeService.Data;

/// <summary>
/// Every text tells of a row that is there, and where students are told of any row of a table in the base package, each row of it
/// has its text in English. An overlay may add rows without one.
/// </summary>
internal sealed class TextRowRule : IPackageRule
{
    /// <summary>The tables whose rows students are told of.</summary>
    public static IReadOnlyList<string> Told { get; } =
        ["cautions", "clay-bodies", "colorants", "colour-notes", "cone-facts", "glazes", "processes"];

    public IReadOnlyList<string> Reads => ["texts", .. Told];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        if (!content.Has("texts")) yield break;
        var texts = content.Rows(TypedTables.Texts);
        var ids = Told.ToDictionary(t => t, t => Ids(content.Tables[t], content.Tables[t].Rows), StringComparer.Ordinal);
        foreach (var at in texts)
        {
            if (!ids.TryGetValue(at.Row.Table, out var rows) || !rows.Contains(at.Row.Row))
                yield return at.Fault("row", FaultRules.TextRow, $"names '{at.Row.Row}', which is no row of {at.Row.Table}");
        }

        var told = texts.Where(t => t.Row is { Audience: MessageAudience.Student, Language: "en" })
            .Select(t => (t.Row.Table, t.Row.Row)).ToHashSet();
        var (name, path) = (content.Packages[0].Name, content.Tables["texts"].Schema.Path);
        foreach (var table in Told.Where(t => told.Any(k => k.Table == t)))
        {
            var own = Ids(content.Tables[table], content.Tables[table].Rows.Where(r => r.Part.Package == name));
            foreach (var id in own.Where(id => !told.Contains((table, id))).Order(StringComparer.Ordinal))
                yield return new(name, path, null, "row", FaultRules.TextRow,
                    $"has no English text for students of '{id}' of {table}; every row of {table} needs one");
        }
    }

    private static HashSet<string> Ids(MergedTable table, IEnumerable<(TableData Part, TableRow Row)> rows)
    {
        var key = table.Schema.IndexesOf(table.Schema.PrimaryKey);
        return rows.Select(r => r.Row.Key(key)).ToHashSet(StringComparer.Ordinal);
    }
}
