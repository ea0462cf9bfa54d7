using System.Collections.Concurrent;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Cones.Conversions;

namespace ConeService.Api.Http;

/// <summary>One data package with everything computed from it; lives until the package is swapped.</summary>
internal sealed class Snapshot
{
    private readonly ConcurrentDictionary<string, PreparedBody> prepared = new(StringComparer.Ordinal);

    public Snapshot(Dataset dataset)
    {
        Dataset = dataset;
        Charts = new(dataset);
        EndPoints = new(Charts);
        Reader = new(Charts);
        ConeDescriber = new(Charts);
        ChartDescriber = new(Charts);
        Converter = new(Charts);
    }

    public Dataset Dataset { get; }

    public ConeCharts Charts { get; }

    public EndPointCalculator EndPoints { get; }

    public ConeReader Reader { get; }

    public ConeDescriber ConeDescriber { get; }

    public ChartDescriber ChartDescriber { get; }

    public Converter Converter { get; }

    /// <summary>
    /// A body that depends on the package alone, made once. The key must come from the package (an id), never from
    /// the caller's text, or the cache would grow with every spelling.
    /// </summary>
    public PreparedBody Prepare<T>(string key, T state, Func<Snapshot, T, PreparedBody> make) =>
        prepared.TryGetValue(key, out var body) ? body : prepared.GetOrAdd(key, static (_, x) => x.make(x.self, x.state), (self: this, state, make));
}

/// <summary>Holds the snapshot in use; it changes when the data package does.</summary>
internal sealed class SnapshotHolder
{
    private volatile Snapshot current;

    public SnapshotHolder(IDatasetHolder holder)
    {
        current = new(holder.Current);
        holder.Swapped += (_, e) => current = new(e.Dataset);
    }

    public Snapshot Current => current;
}
