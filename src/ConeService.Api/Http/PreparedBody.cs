using System.Security.Cryptography;
using System.Text;
using ConeService.Contract.Texts;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Http;

/// <summary>A finished response body with its headers; answers conditional requests.</summary>
internal sealed class PreparedBody : IResult
{
    // Long enough to spare a course page its reloads, short enough that a corrected value spreads the same lesson.
    private const string CacheFor = "public, max-age=300";

    private readonly byte[] bytes;
    private readonly StringValues contentType;
    private readonly StringValues etag;
    private readonly StringValues vary;
    private readonly string? language;

    /// <summary>Joins a body, told in the language of this flow, with its headers.</summary>
    /// <param name="bytes">The body.</param>
    /// <param name="contentType">Its media type.</param>
    /// <param name="negotiated">True when the same URL has other representations.</param>
    public PreparedBody(byte[] bytes, string contentType, bool negotiated = false)
    {
        this.bytes = bytes;
        this.contentType = contentType;
        // Weak: a proxy that compresses the body keeps the tag.
        etag = $"W/\"{Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 12))}\"";
        var speech = Speech.Current;
        language = Language.Named(speech);
        vary = (negotiated, Language.IsChosen(speech)) switch
        {
            (true, true) => $"{HeaderNames.Accept}, {HeaderNames.AcceptLanguage}",
            (true, false) => HeaderNames.Accept,
            (false, true) => HeaderNames.AcceptLanguage,
            _ => StringValues.Empty,
        };
    }

    /// <summary>A text body, UTF-8.</summary>
    public static PreparedBody Text(string text, string mediaType, bool negotiated = false) =>
        new(Encoding.UTF8.GetBytes(text), $"{mediaType}; charset=utf-8", negotiated);

    public Task ExecuteAsync(HttpContext httpContext)
    {
        var (request, response) = (httpContext.Request, httpContext.Response);
        var headers = response.Headers;
        headers.ETag = etag;
        headers.CacheControl = CacheFor;
        if (vary.Count > 0) headers.Vary = vary;
        if (language is not null) headers.ContentLanguage = language;
        if (request.Headers.IfNoneMatch.Count > 0 && Matches(request.Headers.IfNoneMatch))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return Task.CompletedTask;
        }

        headers.ContentType = contentType;
        headers.ContentLength = bytes.Length;
        return HttpMethods.IsHead(request.Method) ? Task.CompletedTask : response.Body.WriteAsync(bytes).AsTask();
    }

    private bool Matches(StringValues ifNoneMatch) =>
        ifNoneMatch == "*" || (EntityTagHeaderValue.TryParseList(ifNoneMatch, out var tags)
            && tags.Any(t => t.Compare(EntityTagHeaderValue.Parse(etag.ToString()), useStrongComparison: false)));
}
