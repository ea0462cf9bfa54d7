using System.Collections.Concurrent;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Api.Http;

/// <summary>One data package with everything computed from it; lives until the package is swapped.</summary>
/// <param name="dataset">The package.</param>
internal sealed class Snapshot(Dataset dataset)
{
    private readonly ConcurrentDictionary<Type, object> parts = new();
    private readonly ConcurrentDictionary<string, PreparedBody> prepared = new(StringComparer.Ordinal);

    public Dataset Dataset { get; } = dataset;

    public ConeCharts Charts { get; } = new(dataset);

    /// <summary>A computation of Firing over this package, made once on first use; each feature names its own.</summary>
    public T Part<T>(Func<Snapshot, T> make)
        where T : class =>
        (T)parts.GetOrAdd(typeof(T), static (_, x) => x.make(x.self), (self: this, make));

    /// <summary>
    /// A body that depends on the package alone, made once. The key must come from the package (an id), never from
    /// the caller's text, or the cache would grow with every spelling.
    /// </summary>
    public PreparedBody Prepare<T>(string key, T state, Func<Snapshot, T, PreparedBody> make) =>
        prepared.TryGetValue(key, out var body) ? body : prepared.GetOrAdd(key, static (_, x) => x.make(x.self, x.state), (self: this, state, make));
}
