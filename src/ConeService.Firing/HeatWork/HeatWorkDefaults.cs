using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Firing.HeatWork;

/// <summary>What is taken for parameters that a caller leaves out, from the table heat-work-defaults.</summary>
/// <param name="dataset">The data package.</param>
internal sealed class HeatWorkDefaults(Dataset dataset)
{
    private readonly Dictionary<string, HeatWorkDefaultRow> rows = dataset.HeatWorkDefaults.ToDictionary(r => r.Id, StringComparer.Ordinal);

    /// <summary>A default; the package guarantees that it is there.</summary>
    public double this[string id] => (double)rows[id].Value;

    /// <summary>The value sent, or the default with the assumption noted.</summary>
    /// <param name="sent">What the caller sent; null when left out.</param>
    /// <param name="id">Id of the default.</param>
    /// <param name="parameter">Name of the parameter.</param>
    /// <param name="assumed">The assumption is added here.</param>
    public double Take(double? sent, string id, string parameter, ICollection<Assumption> assumed)
    {
        if (sent is { } value) return value;
        var row = rows[id];
        assumed.Add(new(parameter, row.Unit == "1" ? $"{row.Value}" : $"{row.Value} {row.Unit}", $"{row.Meaning} {row.Note}".Trim()));
        return (double)row.Value;
    }
}
