namespace ConeService.Data;

/// <summary>Old ids and the ids of today.</summary>
/// <param name="rows">The renamings; no new id is renamed again.</param>
internal sealed class IdRenames(IReadOnlyList<RenamedIdRow> rows)
{
    private static readonly Lazy<IReadOnlyList<RenamedIdRow>> Embedded = new(() => EmbeddedTable.Read(TypedTables.RenamedIds));

    private readonly Dictionary<(string Table, string Old), string> _current = rows.ToDictionary(r => (r.Table, r.Old), r => r.New);

    public IReadOnlyList<RenamedIdRow> Rows { get; } = rows;

    /// <summary>
    /// The renamings that hold for a package: those of the package embedded in this assembly, whose ids the code knows,
    /// and those that the package names itself.
    /// </summary>
    public static IdRenames For(IReadOnlyDictionary<string, MergedTable> tables)
    {
        var known = new IdRenames(Embedded.Value);
        if (!tables.TryGetValue(TypedTables.RenamedIds.Name, out var own) || !own.Sound)
            return known;
        var added = TypedTables.RenamedIds.Bind(own).Select(r => r.Row)
            .Where(r => !known._current.ContainsKey((r.Table, r.Old))).DistinctBy(r => (r.Table, r.Old));
        return new IdRenames([.. known.Rows, .. added.Select(r => r with { New = known.Current(r.Table, r.New) })]);
    }

    /// <summary>The id of today, which is the one given unless it was renamed.</summary>
    public string Current(string table, string id) => _current.GetValueOrDefault((table, id), id);
}
