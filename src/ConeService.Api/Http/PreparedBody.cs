using System.Security.Cryptography;
using System.Text;
using ConeService.Contract.Texts;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Http;

/// <summary>
/// A finished response body with its headers; answers conditional requests. One that is kept compresses itself once in each coding. One
/// of JSON has a page beside it, for who asks for text/html.
/// </summary>
internal sealed class PreparedBody : IResult
{
    // Long enough to spare a course page its reloads, short enough that a corrected value spreads the same lesson.
    private const string CacheFor = "public, max-age=300";

    private readonly byte[] bytes;
    private readonly StringValues contentType;
    private readonly StringValues etag;
    private readonly StringValues vary;
    private readonly string? language;
    private readonly string? coding;
    private bool isForEver;
    private Func<PreparedBody>? makePage;
    private Lazy<PreparedBody>? brotli;
    private Lazy<PreparedBody>? gzip;
    private PreparedBody? page;

    /// <summary>Joins a body, told in the language of this flow, with its headers.</summary>
    /// <param name="bytes">The body.</param>
    /// <param name="contentType">Its media type.</param>
    /// <param name="negotiated">True when the same URL has other representations.</param>
    /// <param name="tagged">What the tag is of, where a body tells the moment at which it was asked for; null: the body.</param>
    /// <param name="varies">A further header of the request on which the body depends; null: none.</param>
    public PreparedBody(byte[] bytes, string contentType, bool negotiated = false, byte[]? tagged = null, string? varies = null)
    {
        this.bytes = bytes;
        this.contentType = contentType;
        // Weak: a proxy that compresses the body keeps the tag.
        etag = $"W/\"{Tag(tagged ?? bytes)}\"";
        var speech = Speech.Current;
        language = Language.Named(speech);
        Varies = varies;
        List<string> decides = [];
        if (negotiated) decides.Add(HeaderNames.Accept);
        if (varies is not null) decides.Add(varies);
        if (bytes.Length >= Encodings.LeastBytes) decides.Add(HeaderNames.AcceptEncoding);
        if (Language.IsChosen(speech)) decides.Add(HeaderNames.AcceptLanguage);
        vary = decides.Count > 0 ? string.Join(", ", decides) : StringValues.Empty;
    }

    // The same body in a coding; another coding is another representation, with a tag of its own (RFC 9110, 8.8.3.3).
    private PreparedBody(PreparedBody plain, string coding)
    {
        bytes = Encodings.Encode(plain.bytes, coding);
        (contentType, vary, language, this.coding) = (plain.contentType, plain.vary, plain.language, coding);
        isForEver = plain.isForEver;
        etag = $"W/\"{Tag(plain.bytes)}-{coding}\"";
    }

    /// <summary>Whether a page that shows the same lies beside this JSON.</summary>
    public bool HasPage { get; init; }

    /// <summary>Whether it answers many requests, and not only the one it was made for.</summary>
    public bool IsKept { get; private set; }

    /// <summary>The further header on which the body depends; null: none.</summary>
    public string? Varies { get; }

    /// <summary>A file whose address never answers anything else, whatever the language.</summary>
    public static PreparedBody Unchanging(byte[] bytes, string contentType) => new(bytes, contentType) { isForEver = true };

    /// <summary>A text body, UTF-8.</summary>
    public static PreparedBody Text(string text, string mediaType, bool negotiated = false, string? varies = null) =>
        new(Encoding.UTF8.GetBytes(text), $"{mediaType}; charset=utf-8", negotiated, varies: varies);

    /// <summary>The body itself, with a page of its own in place of the plain table.</summary>
    /// <param name="make">Makes the page, when it is first asked for.</param>
    public PreparedBody WithPage(Func<PreparedBody> make)
    {
        makePage = make;
        return this;
    }

    /// <summary>The body itself, ready to answer many requests: it keeps what it compresses.</summary>
    public PreparedBody Keep()
    {
        IsKept = true;
        // A picture is compressed as it is.
        if (bytes.Length < Encodings.LeastBytes || contentType == "image/png") return this;
        brotli ??= new(() => new(this, Encodings.Brotli));
        gzip ??= new(() => new(this, Encodings.Gzip));
        return this;
    }

    public Task ExecuteAsync(HttpContext httpContext)
    {
        var (request, response) = (httpContext.Request, httpContext.Response);
        if (HasPage && request.Headers.Accept.Count > 0 && Negotiation.PrefersPage(request))
            return Page(httpContext).ExecuteAsync(httpContext);
        if (brotli is not null && request.Headers.AcceptEncoding.Count > 0 && Encoded(request.Headers.AcceptEncoding) is { } encoded)
            return encoded.ExecuteAsync(httpContext);
        Links.Describe(httpContext);
        var headers = response.Headers;
        headers.ETag = etag;
        headers.CacheControl = isForEver || (request.QueryString.HasValue && PinnedDataset.Answers(httpContext))
            ? PinnedDataset.CacheFor
            : CacheFor;
        if (vary.Count > 0) headers.Vary = vary;
        if (language is not null) headers.ContentLanguage = language;
        if (coding is not null) headers.ContentEncoding = coding;
        if (request.Headers.IfNoneMatch.Count > 0 && Matches(request.Headers.IfNoneMatch))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return Task.CompletedTask;
        }

        headers.ContentType = contentType;
        headers.ContentLength = bytes.Length;
        return HttpMethods.IsHead(request.Method) ? Task.CompletedTask : response.Body.WriteAsync(bytes).AsTask();
    }

    private static string Tag(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 12));

    private PreparedBody? Encoded(StringValues accepted) => Encodings.Choose(accepted) switch
    {
        Encodings.Brotli => brotli!.Value,
        Encodings.Gzip => gzip!.Value,
        _ => null,
    };

    private PreparedBody Page(HttpContext context)
    {
        if (page is { } made) return made;
        var text = makePage?.Invoke() ?? AnswerPage.Render(bytes, context);
        // What is not kept is thrown away with its page.
        return page = text.Beside(this);
    }

    // The page shares its address with the JSON, so its answer depends on the Accept header too.
    private PreparedBody Beside(PreparedBody json)
    {
        var beside = new PreparedBody(bytes, contentType.ToString(), negotiated: true);
        return json.brotli is null ? beside : beside.Keep();
    }

    private bool Matches(StringValues ifNoneMatch) =>
        ifNoneMatch == "*" || (EntityTagHeaderValue.TryParseList(ifNoneMatch, out var tags)
            && tags.Any(t => t.Compare(EntityTagHeaderValue.Parse(etag.ToString()), useStrongComparison: false)));
}
