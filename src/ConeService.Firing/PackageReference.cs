using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Firing;

/// <summary>The data package itself and its bibliography.</summary>
public sealed class PackageReference
{
    private readonly Dataset dataset;

    internal PackageReference(Dataset dataset) => this.dataset = dataset;

    /// <summary>Version, checksums and change log.</summary>
    public DatasetDescription Describe() => DatasetDescription.Of(dataset);

    /// <summary>The bibliography.</summary>
    public SourceList Sources() => new(dataset.VersionId, dataset.Sources);

    /// <summary>A source and what rests on it.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public SourceDetail Source(string id)
    {
        var row = Rows.Find(dataset, "sources", dataset.Sources, s => s.Id, id, "source", "/v1/sources");
        return new(dataset.VersionId, row, [.. dataset.Citations[row.Id].GroupBy(c => c.Table).Select(g => new SourceUse(g.Key, g.Count()))]);
    }
}
