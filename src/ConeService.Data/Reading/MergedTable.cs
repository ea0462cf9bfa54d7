namespace ConeService.Data;

/// <summary>A table of the base package with what the overlays add to it.</summary>
internal sealed class MergedTable(TableSchema schema)
{
    /// <summary>The schema of the base package, which rules the overlays' rows too.</summary>
    public TableSchema Schema { get; } = schema;

    /// <summary>One part per package, the base package first; none when the package was written before the table.</summary>
    public List<TableData> Parts { get; } = [];

    public bool Sound => Parts.TrueForAll(p => p.Sound);

    public bool Complete => Parts.TrueForAll(p => p.Complete);

    public IEnumerable<(TableData Part, TableRow Row)> Rows => Parts.SelectMany(p => p.Rows.Select(r => (p, r)));
}
