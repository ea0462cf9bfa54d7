using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Datasets;
using ConeService.Contract.Equations;
using ConeService.Data;
using ConeService.Firing.Datasets;
using ConeService.Firing.Equations;

namespace ConeService.Firing;

/// <summary>The data package itself, its bibliography, and what is computed with.</summary>
public sealed class PackageReference
{
    private readonly Dataset dataset;

    internal PackageReference(Dataset dataset) => this.dataset = dataset;

    /// <summary>Version, checksums and change log.</summary>
    public DatasetDescription Describe() => new(
        dataset.VersionId,
        dataset.Title,
        dataset.License,
        dataset.Checksum,
        [.. dataset.Resources.Select(r => new PackageFile(r.Package, r.Name, r.Path, r.Title, r.Rows, r.Bytes, r.Sha256))],
        [.. dataset.EndPoints.CountBy(e => e.Confidence).OrderBy(c => c.Key).Select(c => new ConfidenceCount(c.Key, c.Value))],
        [.. dataset.Corrections.Select(c => new Correction(
            c.Table, c.Key, c.Field, c.Printed, c.Adopted, c.Reason, c.Evidence, c.Sources, c.Confidence))],
        dataset.ChangeLog);

    /// <summary>The bibliography.</summary>
    public SourceList Sources() => new(dataset.VersionId, [.. dataset.Sources.Select(Of)]);

    /// <summary>A source and what rests on it.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public SourceDetail Source(string id)
    {
        var row = Rows.Find(dataset, "sources", dataset.Sources, s => s.Id, id, "source", "/v1/sources");
        var cited = dataset.Citations[row.Id].CountBy(c => c.Table);
        return new(dataset.VersionId, Of(row), [.. cited.Select(c => new SourceUse(c.Key, c.Value))]);
    }

    /// <summary>What changed since an earlier version.</summary>
    /// <param name="earlier">The package of then.</param>
    /// <param name="versions">The versions that can be asked for.</param>
    public DatasetChanges ChangesSince(Dataset earlier, IReadOnlyList<string> versions) =>
        new(dataset.VersionId, earlier.VersionId, versions, PackageDifference.Of(earlier, dataset));

    /// <summary>Every table as it stands.</summary>
    public TableList Tables() => new TableCatalogue(dataset).All();

    /// <summary>A table with its rows.</summary>
    /// <exception cref="RefusedException">There is none of that name.</exception>
    public TableDetail Table(string id) => new TableCatalogue(dataset).Find(id);

    /// <summary>A row of a table with its sources.</summary>
    /// <param name="table">Name of the table.</param>
    /// <param name="id">Its key, the parts joined by <see cref="TableAddress.Between"/>.</param>
    /// <exception cref="RefusedException">There is no such table or row.</exception>
    public StoredRowDetail StoredRow(string table, string id) => new TableCatalogue(dataset).Row(table, id);

    /// <summary>A printed cell with its sources.</summary>
    /// <param name="chart">Id of the chart.</param>
    /// <param name="cone">The cone, as the chart prints it.</param>
    /// <param name="rate">The rate as it is printed, °C/h, or <c>unstated</c>.</param>
    /// <exception cref="RefusedException">There is no such chart or cell.</exception>
    public ChartCellDetail Cell(string chart, string cone, string rate) => new TableCatalogue(dataset).Cell(chart, cone, rate);

    /// <summary>The equations that answers come from.</summary>
    public EquationList Equations() => new EquationCatalogue(dataset).All();

    /// <summary>An equation.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public EquationDetail Equation(string id) => new EquationCatalogue(dataset).Find(id);

    internal static Source Of(SourceRow row) => new(
        Id: row.Id,
        SourceKind: row.Kind,
        Name: row.Citation,
        Year: row.Year,
        Locator: row.Locator,
        Rights: row.Rights,
        Seen: row.Seen,
        Via: row.Via,
        SeenVia: row.SeenVia,
        Accessed: row.Accessed,
        Address: row.Address,
        Doi: row.Doi,
        Isbn: row.Isbn,
        Standard: row.Standard,
        Witness: row.Witness);
}
