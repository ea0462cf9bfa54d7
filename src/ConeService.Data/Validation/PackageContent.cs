namespace ConeService.Data;

/// <summary>The base package and its overlays as typed rows. A table's rows may be asked for only when it is sound.</summary>
internal sealed class PackageContent(
    IReadOnlyList<LoadedPackage> packages, IReadOnlyDictionary<string, MergedTable> tables, IdRenames renames)
{
    private readonly Dictionary<string, object> _bound = [];

    /// <summary>The base package first.</summary>
    public IReadOnlyList<LoadedPackage> Packages { get; } = packages;

    public IReadOnlyDictionary<string, MergedTable> Tables { get; } = tables;

    /// <summary>The ids that were renamed; the tables have today's already.</summary>
    public IdRenames Renames { get; } = renames;

    public bool Sound(string table) => Tables.TryGetValue(table, out var merged) && merged.Sound;

    /// <summary>False when the package was written before the table: nothing can be asked of its rows then.</summary>
    public bool Has(string table) => Tables[table].Parts.Count > 0;

    public IReadOnlyList<Located<T>> Rows<T>(TypedTable<T> table)
    {
        if (_bound.TryGetValue(table.Name, out var rows))
            return (IReadOnlyList<Located<T>>)rows;
        var bound = table.Bind(Tables[table.Name]);
        _bound[table.Name] = bound;
        return bound;
    }

    /// <summary>Position of each cone in the order in which they go down.</summary>
    public Dictionary<string, int> ConeOrder() =>
        Rows(TypedTables.Cones).Select((c, i) => (c.Row.Id, i)).ToDictionary(c => c.Id, c => c.i, StringComparer.Ordinal);
}
