using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Http;

/// <summary>
/// The query parameter <c>dataset</c>, by which a caller pins a data address to one version of the data package. The answer then never
/// changes and may be kept for ever; where another version is served, there is no answer.
/// </summary>
internal static class PinnedDataset
{
    /// <summary>Name of the parameter.</summary>
    public const string Parameter = "dataset";

    /// <summary>A year, the longest that caches are asked to keep anything; unchanged meanwhile (RFC 8246).</summary>
    public const string CacheFor = "public, max-age=31536000, immutable";

    /// <summary>Holds the version asked for against the one served.</summary>
    /// <exception cref="RefusedException">Another version is served.</exception>
    public static void Check(HttpContext context, string asked)
    {
        var snapshot = Served(context);
        Require(snapshot, asked);
        context.Features.Set(new Pin(snapshot, asked));
    }

    /// <summary>The same for an address that is only spoken of; the answer that speaks of it may change.</summary>
    /// <exception cref="RefusedException">Another version is served.</exception>
    public static void Require(Snapshot served, string asked)
    {
        // A plus sign that was not escaped arrives as a blank; it stands before the versions of overlays.
        if (asked.Replace(' ', '+') != served.Dataset.VersionId) throw Refuse(asked, served);
    }

    /// <summary>Whether the answer is of a pinned package.</summary>
    /// <exception cref="RefusedException">The package was swapped since the request was checked.</exception>
    public static bool Answers(HttpContext context)
    {
        if (context.Features.Get<Pin>() is not { } pin) return false;
        return Served(context) is var now && now == pin.Snapshot ? true : throw Refuse(pin.Asked, now);
    }

    private static Snapshot Served(HttpContext context) => context.RequestServices.GetRequiredService<SnapshotHolder>().Current;

    private static RefusedException Refuse(string asked, Snapshot served) => new(new Finding(
        FindingCodes.DatasetNotServed, Parameter, asked,
        Message.Of("http.dataset-not-served", ("asked", asked), ("served", served.Dataset.VersionId)),
        Message.Verbatim([served.Dataset.VersionId]), Message.Of("http.leave-dataset-out")));

    private sealed record Pin(Snapshot Snapshot, string Asked);
}
