using Microsoft.AspNetCore.Http.Metadata;

namespace ConeService.Api.Http;

/// <summary>The media types of answers, and the suffix by which each is asked for in an address.</summary>
internal static class Formats
{
    private static readonly (string Suffix, string MediaType)[] All =
    [
        (".json", JsonBody.MediaType), (".txt", OneLine.MediaType), (".csv", Csv.MediaType), (".svg", "image/svg+xml"),
        (".html", HtmlPage.MediaType), (".ics", "text/calendar"), (".zip", "application/zip"), (".gift", "text/x-gift"),
    ];

    /// <summary>The media type of a suffix; null for one that no address has.</summary>
    public static string? MediaType(string suffix) =>
        All.FirstOrDefault(f => f.Suffix.Equals(suffix, StringComparison.OrdinalIgnoreCase)).MediaType;

    /// <summary>The media types in which an address answers, the usual one first.</summary>
    public static IReadOnlyList<string> Of(Endpoint endpoint) =>
        [.. endpoint.Metadata.GetOrderedMetadata<IProducesResponseTypeMetadata>()
            .Where(m => m.StatusCode == StatusCodes.Status200OK).SelectMany(m => m.ContentTypes).Distinct()];

    /// <summary>The suffixes by which an address can be asked.</summary>
    public static IReadOnlyList<string> Suffixes(Endpoint endpoint)
    {
        var types = Of(endpoint);
        return [.. All.Where(f => types.Contains(f.MediaType)).Select(f => f.Suffix)];
    }
}
