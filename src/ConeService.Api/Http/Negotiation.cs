using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Http;

/// <summary>Chooses a representation by the Accept header.</summary>
internal static class Negotiation
{
    /// <summary>The offer that the caller likes best; the first offer when any will do.</summary>
    /// <param name="request">The request.</param>
    /// <param name="offers">Media types, the default first.</param>
    /// <exception cref="RefusedException">None of the offers is acceptable.</exception>
    public static string Choose(HttpRequest request, params string[] offers)
    {
        var accept = request.Headers.Accept;
        if (accept.Count == 0) return offers[0];
        // Beside every JSON that is read, and not posted for, lies its page; the prepared JSON hands it out.
        var withPage = offers.Contains(JsonBody.MediaType) && !offers.Contains(HtmlPage.MediaType) && IsRead(request);
        if (!MediaTypeHeaderValue.TryParseList(accept, out var wanted)) throw Refuse();
        var best = offers
            .Select((offer, index) => (offer, index, quality: Quality(offer, wanted)))
            .Where(x => x.quality > 0)
            .OrderByDescending(x => x.quality)
            .ThenBy(x => x.index)
            .FirstOrDefault();
        if (withPage && Quality(HtmlPage.MediaType, wanted) > best.quality) return JsonBody.MediaType;
        return best.offer ?? throw Refuse();

        RefusedException Refuse() => NoneOf(withPage ? [.. offers, HtmlPage.MediaType] : offers, accept.ToString());
    }

    /// <summary>Whether the caller likes a page better than JSON.</summary>
    public static bool PrefersPage(HttpRequest request) =>
        MediaTypeHeaderValue.TryParseList(request.Headers.Accept, out var wanted)
        && Quality(HtmlPage.MediaType, wanted) > Math.Max(
            Quality(JsonBody.MediaType, wanted), Quality(Problems.ProblemWriter.MediaType, wanted));

    private static bool IsRead(HttpRequest request) => HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method);

    // The most specific range decides (RFC 9110, 12.5.1).
    private static double Quality(string offer, IList<MediaTypeHeaderValue> wanted)
    {
        var type = new MediaTypeHeaderValue(offer);
        var match = wanted
            .Where(w => type.MediaType.Equals(w.MediaType, StringComparison.OrdinalIgnoreCase) || type.IsSubsetOf(Bare(w)))
            .MaxBy(w => w.MatchesAllTypes ? 0 : w.MatchesAllSubTypes ? 1 : 2);
        return match is null ? 0 : match.Quality ?? 1;
    }

    // Parameters such as charset do not narrow what is offered here.
    private static MediaTypeHeaderValue Bare(MediaTypeHeaderValue value) => new(value.MediaType);

    private static RefusedException NoneOf(string[] offers, string accept) => new(new Finding(
        FindingCodes.NotAcceptable, "Accept", accept, Message.Of("http.media-type-not-available"), Message.Verbatim(offers),
        Message.Of("http.leave-accept-out")));
}
