using System.Collections.ObjectModel;

namespace ConeService.Data;

/// <summary>
/// Which rows cite a source, found by the references that the descriptor declares: a table that is added later is counted
/// without being told of here.
/// </summary>
internal static class CitationIndex
{
    private const string Bibliography = "sources";

    /// <summary>Per source its rows, tables by name and rows in their order; a row that names a source in two fields counts once.</summary>
    public static ReadOnlyDictionary<string, IReadOnlyList<Citation>> Of(PackageContent content)
    {
        var citations = content.Rows(TypedTables.Sources).ToDictionary(s => s.Row.Id, _ => new List<Citation>(), StringComparer.Ordinal);
        foreach (var table in content.Tables.Values.OrderBy(t => t.Schema.Name, StringComparer.Ordinal))
        {
            var fields = CitingFields(table.Schema);
            var key = table.Schema.IndexesOf(table.Schema.PrimaryKey);
            foreach (var (_, row) in fields.Length == 0 ? [] : table.Rows)
            {
                Citation? citation = null;
                foreach (var source in fields.SelectMany(f => Items(row.Values[f])).Distinct(StringComparer.Ordinal))
                    citations[source].Add(citation ??= new(table.Schema.Name, row.Key(key)));
            }
        }

        return citations.ToDictionary(c => c.Key, c => (IReadOnlyList<Citation>)c.Value.AsReadOnly(), StringComparer.Ordinal).AsReadOnly();
    }

    private static int[] CitingFields(TableSchema schema) =>
    [
        .. schema.ForeignKeys.Where(k => k is { Table: Bibliography, References: ["id"] }).Select(k => schema.IndexOf(k.Fields[0])),
        .. Enumerable.Range(0, schema.Fields.Count).Where(i => schema.Fields[i].ItemReference is { Table: Bibliography, Field: "id" }),
    ];

    private static string[] Items(object? value) => value switch
    {
        string[] items => items,
        string item => [item],
        _ => [],
    };
}
