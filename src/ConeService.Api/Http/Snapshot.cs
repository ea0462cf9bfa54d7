using System.Collections.Concurrent;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Http;

/// <summary>One data package with everything computed from it; lives until the package is swapped.</summary>
/// <param name="dataset">The package.</param>
internal sealed class Snapshot(Dataset dataset)
{
    private readonly ConcurrentDictionary<string, PreparedBody> prepared = new(StringComparer.Ordinal);

    /// <summary>What was answered by the path alone, as <see cref="KnownPath"/> keeps it.</summary>
    public ConcurrentDictionary<string, (Endpoint Endpoint, PreparedBody Body)> Paths { get; } = new(StringComparer.Ordinal);

    /// <summary>The package.</summary>
    public Dataset Dataset => Reference.Dataset;

    /// <summary>Every computation over it.</summary>
    public FiringReference Reference { get; } = FiringReference.Open(dataset);

    /// <summary>How it says its sentences.</summary>
    public MessageBook Messages { get; } = MessageBook.For(dataset);

    /// <summary>
    /// A body that depends on the package and the language alone, made once. The key must come from the package (an id), or making the
    /// body must fail for whatever is not in it; else the cache would grow with every spelling.
    /// </summary>
    public PreparedBody Prepare<T>(string key, T state, Func<FiringReference, T, PreparedBody> make)
    {
        var speech = Speech.Current;
        if (speech.Language != MessageBook.English) key = $"{speech.Language} {key}";
        if (prepared.TryGetValue(key, out var body)) return body;
        // The package may have been swapped since the language was chosen; what is kept is said in this one's words.
        if (speech.Book != Messages) Speech.Use(speech with { Book = Messages });
        return prepared.GetOrAdd(key, static (_, x) => x.make(x.Reference, x.state).Keep(), (Reference, state, make));
    }

    /// <summary>The same, for a body that takes nothing but the package.</summary>
    public PreparedBody Prepare(string key, Func<FiringReference, PreparedBody> make) => Prepare(key, make, static (r, f) => f(r));
}
