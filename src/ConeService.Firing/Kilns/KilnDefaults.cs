using ConeService.Data;

namespace ConeService.Firing.Kilns;

/// <summary>The rows of kiln-defaults by id. The reader has checked that all are there, in the units named in the table.</summary>
/// <param name="dataset">The data.</param>
internal sealed class KilnDefaults(Dataset dataset)
{
    private readonly Dictionary<string, KilnDefaultRow> rows = dataset.KilnDefaults.ToDictionary(r => r.Id, StringComparer.Ordinal);

    /// <summary>The value of a default, in its unit.</summary>
    public double this[string id] => (double)rows[id].Value;

    /// <summary>A default that packages of before it do without.</summary>
    public double Of(string id, double absent) => rows.TryGetValue(id, out var row) ? (double)row.Value : absent;

    /// <summary>The row of a default.</summary>
    public KilnDefaultRow Row(string id) => rows[id];
}
