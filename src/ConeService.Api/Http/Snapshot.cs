using System.Collections.Concurrent;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Http;

/// <summary>One data package with everything computed from it; lives until the package is swapped.</summary>
/// <param name="dataset">The package.</param>
internal sealed class Snapshot(Dataset dataset)
{
    private readonly ConcurrentDictionary<string, PreparedBody> prepared = new(StringComparer.Ordinal);

    /// <summary>The package.</summary>
    public Dataset Dataset => Reference.Dataset;

    /// <summary>Every computation over it.</summary>
    public FiringReference Reference { get; } = FiringReference.Open(dataset);

    /// <summary>
    /// A body that depends on the package alone, made once. The key must come from the package (an id), or making the
    /// body must fail for whatever is not in it; else the cache would grow with every spelling.
    /// </summary>
    public PreparedBody Prepare<T>(string key, T state, Func<FiringReference, T, PreparedBody> make) =>
        prepared.TryGetValue(key, out var body) ? body : prepared.GetOrAdd(key, static (_, x) => x.make(x.Reference, x.state), (Reference, state, make));

    /// <summary>The same, for a body that takes nothing but the package.</summary>
    public PreparedBody Prepare(string key, Func<FiringReference, PreparedBody> make) => Prepare(key, make, static (r, f) => f(r));
}
