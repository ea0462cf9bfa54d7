using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Datasets;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Datasets;

/// <summary>Tells the tables of a package as they stand.</summary>
internal sealed class TableCatalogue(Dataset dataset)
{
    // What a person calls a row, the first that it has.
    private static readonly string[] Names = ["name", "title", "citation", "statement", "rule", "meaning", "hazard", "note"];

    /// <summary>All of them.</summary>
    public TableList All() => new(dataset.VersionId, dataset.Tables.Sum(t => t.Count), [.. dataset.Tables.Select(Of)]);

    /// <summary>A table with its rows.</summary>
    /// <exception cref="RefusedException">There is none of that name.</exception>
    public TableDetail Find(string id)
    {
        var table = Table(id);
        return new(
            dataset.VersionId,
            Of(table),
            [.. table.Fields.Select(f => new TableField(f.Name, f.Description, f.Type, f.Unit, f.UnitField, f.RefersTo))],
            [.. table.Rows.Select(r => Of(table, r))]);
    }

    /// <summary>A row.</summary>
    /// <exception cref="RefusedException">There is no such table or row; what its id is now, or ids that are near, are named.</exception>
    public StoredRowDetail Row(string id, string row)
    {
        var table = Table(id);
        RenamedId.Refuse(dataset, table.Name, row, "id");
        var found = table.Find(row) ?? throw Rows.Refuse("row", row, Near(table, row), $"/v1/tables/{table.Name}");
        var cited = Cited(table, found);
        return new(dataset.VersionId, Of(table, found), Place(found), cited, [.. cited.Select(SourceOf)]);
    }

    /// <summary>A printed cell.</summary>
    /// <exception cref="RefusedException">There is no such chart or cell.</exception>
    public ChartCellDetail Cell(string chart, string cone, string rate)
    {
        var known = Rows.Find(dataset, "charts", dataset.Charts, c => c.Id, chart, "chart", "/v1/charts");
        var cells = dataset.EndPoints.Where(e => e.Chart == known.Id).ToList();
        var cell = cells.Find(e => e.Cone == cone && e.Rate == rate) ?? throw Rows.Refuse(
            "cell", Id(cone, rate), cells.Where(e => e.Cone == cone).Select(e => Id(e.Cone, e.Rate)), $"/v1/charts/{known.Id}");
        var row = Table("end-points").Find(Id(cell.Chart, Id(cell.Cone, cell.Rate)))!;
        var at = cell.RateCelsiusPerHour is null ? "no stated rate" : $"{cell.Rate} °C/h";
        return new(
            dataset.VersionId, $"cone {cell.Cone} at {at}, {known.Title}", cell.Chart, cell.Cone, cell.RateCelsiusPerHour,
            cell.Celsius, PrintedCells.Fahrenheit(cell), PrintedCells.BasisOf(cell), cell.Confidence, Place(row), [cell.Source],
            [SourceOf(cell.Source)], cell.Note);
    }

    // A key of several parts holds a cone as a rule, and no cone is probably another: only what differs in the last part is offered.
    private static IEnumerable<string> Near(PackageTable table, string row)
    {
        var ids = table.Rows.Select(r => r.Id);
        if (table.Key.Count == 1) return ids;
        var asked = row.LastIndexOf(TableAddress.Between);
        return asked < 0 ? [] : ids.Where(i => i.StartsWith(row[..(asked + 1)], StringComparison.Ordinal));
    }

    private static string Id(string first, string rest) => $"{first}{TableAddress.Between}{rest}";

    private static Table Of(PackageTable table) => new(table.Name, table.Title, table.Description, table.Key, table.Count);

    private static StoredRow Of(PackageTable table, PackageRow row) => new(
        table.Name, row.Id, Names.Select(n => row[n]).OfType<string>().FirstOrDefault() ?? row.Id,
        table.Fields.ToDictionary(f => f.Name, f => CellJson.Of(row[f.Name]), StringComparer.Ordinal));

    private static List<string> Cited(PackageTable table, PackageRow row) => table.Name == "sources"
        ? [row.Id]
        : [.. table.Fields.Where(f => f.RefersTo == "sources").SelectMany(f => row.Items(f.Name)).Distinct(StringComparer.Ordinal)];

    // Where a row tells no place, its reader is told so: the source as a whole is all there is.
    private static Message Place(PackageRow row) =>
        row["locator"] is string place ? Message.Verbatim(place) : Message.Of("dataset.place-not-recorded");

    private PackageTable Table(string id) => Rows.Find(dataset, "tables", dataset.Tables, t => t.Name, id, "table", "/v1/tables");

    private Source SourceOf(string id) => PackageReference.Of(dataset.Sources.First(s => s.Id == id));
}
