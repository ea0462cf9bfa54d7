namespace ConeService.Data;

/// <summary>Old ids and the ids of today.</summary>
/// <param name="rows">The renamings; no new id is renamed again.</param>
internal sealed class IdRenames(IReadOnlyList<RenamedIdRow> rows)
{
    private static readonly Lazy<IReadOnlyList<RenamedIdRow>> Embedded = new(ReadEmbedded);

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

    // What is wrong with the embedded package is said when it is loaded, not here.
    private static IReadOnlyList<RenamedIdRow> ReadEmbedded()
    {
        var faults = new List<PackageFault>();
        if (LoadedPackage.Read(new EmbeddedPackageFiles(), isOverlay: false, faults) is not { } package
            || package.Descriptor.Tables.FirstOrDefault(t => t.Name == TypedTables.RenamedIds.Name) is not { } schema)
            return [];
        var table = new MergedTable(schema);
        table.Parts.Add(CsvTableReader.Read(package, schema, faults));
        CellChecks.Run(table.Parts[0]);
        return faults.Count == 0 ? [.. TypedTables.RenamedIds.Bind(table).Select(r => r.Row)] : [];
    }
}
