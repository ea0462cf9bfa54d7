using System.Collections.Concurrent;
using System.Net.Http.Headers;

namespace ConeService.Client.Asking;

/// <summary>Answers that the service allows to be kept, for as long as it allows.</summary>
/// <param name="most">How many are kept; 0: none.</param>
/// <param name="time">The clock.</param>
internal sealed class AnswerCache(int most, TimeProvider time)
{
    private readonly ConcurrentDictionary<string, (byte[] Body, DateTimeOffset Until)> kept = new(StringComparer.Ordinal);

    /// <summary>The answer to an address; null when none is kept or it is too old.</summary>
    public byte[]? Find(string address)
    {
        if (!kept.TryGetValue(address, out var found)) return null;
        if (found.Until > time.GetUtcNow()) return found.Body;
        kept.TryRemove(address, out _);
        return null;
    }

    /// <summary>Keeps an answer, if it may be kept.</summary>
    public void Keep(string address, byte[] body, CacheControlHeaderValue? control)
    {
        if (most == 0 || control is not { NoStore: false, NoCache: false, MaxAge: { } age }) return;
        // Which of them are worth keeping nobody knows; a cache of addresses from a loop is let go whole.
        if (kept.Count >= most) kept.Clear();
        kept[address] = (body, time.GetUtcNow() + age);
    }
}
