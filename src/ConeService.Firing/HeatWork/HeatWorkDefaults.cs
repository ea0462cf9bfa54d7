using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.HeatWork;

/// <summary>What is taken for parameters that a caller leaves out, from the table heat-work-defaults.</summary>
/// <param name="dataset">The data package.</param>
internal sealed class HeatWorkDefaults(Dataset dataset)
{
    private readonly Dictionary<string, HeatWorkDefaultRow> rows = dataset.HeatWorkDefaults.ToDictionary(r => r.Id, StringComparer.Ordinal);

    // Every id that this service looks up.
    private static readonly string[] Needed =
        [
            "room", "full-speed-rate", "cone-sigma", "gradient-sigma", "energy-log-sigma",
            "drift-cap", "drift-noble-metal", "drift-base-metal",
        ];

    /// <summary>What is missing from a package that following a firing needs; nothing of a package without the table.</summary>
    public static IEnumerable<PackageFault> Requires(Dataset dataset) => dataset.HeatWorkDefaults.Count == 0
        ? []
        : Requirements.Ids(dataset, "heat-work-defaults", Needed, dataset.HeatWorkDefaults.Select(r => r.Id), "following a firing");

    /// <summary>A default; <see cref="Requires"/> guarantees that it is there.</summary>
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
        assumed.Add(new(
            parameter, row.Unit == "1" ? $"{row.Value}" : $"{row.Value} {row.Unit}", Message.Verbatim($"{row.Meaning} {row.Note}".Trim())));
        return (double)row.Value;
    }
}
