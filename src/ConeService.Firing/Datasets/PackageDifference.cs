using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Firing.Datasets;

/// <summary>Holds one data package against an earlier one, both with the ids of today.</summary>
internal static class PackageDifference
{
    /// <summary>The tables that differ, by name; rows of overlays are left out.</summary>
    public static IReadOnlyList<TableChanges> Of(Dataset before, Dataset after)
    {
        var (old, now) = (ByName(before), ByName(after));
        return
        [
            .. old.Keys.Union(now.Keys).Order(StringComparer.Ordinal)
                .Select(n => Of(old.GetValueOrDefault(n), now.GetValueOrDefault(n), before.Name, after.Name)).OfType<TableChanges>(),
        ];
    }

    private static TableChanges? Of(PackageTable? old, PackageTable? now, string before, string after)
    {
        var (was, isNow) = (RowsOf(old, before), RowsOf(now, after));
        var (fieldsThen, fieldsNow) = (FieldsOf(old), FieldsOf(now));
        // A column that came later is filled in when an older package is read, and then it has not changed.
        var both = fieldsThen.Intersect(fieldsNow).ToList();
        List<CellChange> cells =
        [
            .. isNow.Values.Where(r => was.ContainsKey(r.Id)).SelectMany(r => both.Where(f => !Same(was[r.Id][f], r[f]))
                .Select(f => new CellChange(r.Id, f, CellJson.Of(was[r.Id][f]), CellJson.Of(r[f])))),
        ];
        var changes = new TableChanges(
            (now ?? old)!.Name, (now ?? old)!.Title, old is null, [.. fieldsNow.Except(fieldsThen)], [.. fieldsThen.Except(fieldsNow)],
            [.. isNow.Keys.Except(was.Keys)], [.. was.Keys.Except(isNow.Keys)], cells);
        return changes is { FieldsAdded: [], FieldsRemoved: [], RowsAdded: [], RowsRemoved: [], Cells: [] } ? null : changes;
    }

    private static bool Same(object? one, object? other) =>
        one is string[] items && other is string[] others ? items.SequenceEqual(others, StringComparer.Ordinal) : Equals(one, other);

    private static Dictionary<string, PackageTable> ByName(Dataset dataset) =>
        dataset.Tables.ToDictionary(t => t.Name, StringComparer.Ordinal);

    private static OrderedDictionary<string, PackageRow> RowsOf(PackageTable? table, string package)
    {
        var rows = new OrderedDictionary<string, PackageRow>(StringComparer.Ordinal);
        foreach (var row in (table?.Rows ?? []).Where(r => r.Package == package)) rows.Add(row.Id, row);
        return rows;
    }

    private static List<string> FieldsOf(PackageTable? table) =>
        [.. (table?.Fields ?? []).Where(f => f.Description.Length > 0).Select(f => f.Name)];
}
