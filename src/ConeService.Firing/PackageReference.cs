using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Datasets;
using ConeService.Contract.Equations;
using ConeService.Data;
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

    /// <summary>The equations that answers come from.</summary>
    public EquationList Equations() => new EquationCatalogue(dataset).All();

    /// <summary>An equation.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public EquationDetail Equation(string id) => new EquationCatalogue(dataset).Find(id);

    private static Source Of(SourceRow row) => new(
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
