namespace ConeService.Data;

/// <summary>
/// The rows that the rules on labels judge: those of a base package that says of each source what was really read of it. Older
/// packages stay what they were, and a studio's own rows are its own word.
/// </summary>
internal static class EvidencedRows
{
    private static readonly Confidence[] Strong = [Confidence.Corroborated, Confidence.Published];

    public static bool Judges(PackageContent content) =>
        content.Packages[0].Descriptor.Tables.Any(t => t.Name == TypedTables.Sources.Name && t.IndexOf("via") >= 0);

    /// <summary>Every cited row, with its table, its sources and its word.</summary>
    public static IEnumerable<EvidencedRow> Of(PackageContent content)
    {
        if (!Judges(content))
            yield break;
        foreach (var table in content.Tables.Values.Where(t => t.Sound))
        {
            var (source, confidence) = (table.Schema.IndexOf("source"), table.Schema.IndexOf(CitedRows.Confidence));
            if (source < 0 || confidence < 0)
                continue;
            foreach (var (part, row) in table.Rows.Where(r => r.Part.Package == content.Packages[0].Name))
            {
                string[] sources = row.Values[source] as string[] ?? (row.Values[source] is string one ? [one] : []);
                if (row.Values[confidence] is string word && EnumWords.TryRead<Confidence>(word, out var trusted))
                    yield return new(part, row, sources, trusted);
            }
        }
    }

    /// <summary>Published or corroborated: the words that claim a print.</summary>
    public static bool ClaimsPrint(Confidence confidence) => Strong.Contains(confidence);
}

/// <summary>A cited row.</summary>
/// <param name="Table">The rows of its file.</param>
/// <param name="Row">The row.</param>
/// <param name="Sources">Ids of its sources.</param>
/// <param name="Confidence">Its word.</param>
internal sealed record EvidencedRow(TableData Table, TableRow Row, string[] Sources, Confidence Confidence)
{
    public bool ClaimsPrint => EvidencedRows.ClaimsPrint(Confidence);

    /// <summary>A cell by the name of its field; null where the table has no such field, or the cell is blank.</summary>
    public string? Cell(string field) =>
        Table.Schema.IndexOf(field) is >= 0 and var at && Row.Cells[at].Length > 0 ? Row.Cells[at] : null;

    public PackageFault Fault(string field, string rule, string reason) =>
        new(Table.Package, Table.Schema.Path, Row.Line, field, rule, reason);
}
