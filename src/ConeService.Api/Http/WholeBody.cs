using System.Text;
using System.Text.RegularExpressions;
using ConeService.Contract.Texts;

namespace ConeService.Api.Http;

/// <summary>
/// The answer to a POST, never cached. It is made whole before a byte is sent, so that what fails on the way is a problem
/// document and not half an answer; and it holds no number that is not finite, in JSON or in any other form.
/// </summary>
/// <param name="bytes">The body, told in the language of this flow.</param>
/// <param name="contentType">Its media type, with the charset.</param>
internal sealed partial class WholeBody(ReadOnlyMemory<byte> bytes, string contentType) : IResult
{
    /// <summary>An answer in another form than JSON: CSV, a figure, a page, a calendar.</summary>
    /// <param name="answer">What the text was made of.</param>
    /// <param name="text">The text.</param>
    /// <param name="contentType">Its media type, with the charset utf-8.</param>
    /// <exception cref="ArgumentException">The answer holds a number that is not finite.</exception>
    /// <exception cref="NotFiniteNumberException">A place in the markup is not finite.</exception>
    public static WholeBody Text<T>(T answer, string text, string contentType)
    {
        // A word such as NaN may stand in what a caller sent and gets back, so the numbers are checked and not the words:
        // the writer of JSON refuses what is not finite.
        _ = JsonBody.Bytes(answer);
        if (IsMarkup(contentType) && NotFiniteInTag().Match(text) is { Success: true } found)
            throw new NotFiniteNumberException($"A place in the markup is not finite: {found.Value}");
        return new(Encoding.UTF8.GetBytes(text), contentType);
    }

    /// <summary>The same answer to a GET, which may be kept.</summary>
    /// <param name="unstamped">The body as it would be at any other moment, where it tells the moment of asking; null: the body.</param>
    public PreparedBody Cacheable(string? unstamped = null) =>
        new(bytes.ToArray(), contentType, negotiated: true, unstamped is null ? null : Encoding.UTF8.GetBytes(unstamped));

    public Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        response.ContentType = contentType;
        response.ContentLength = bytes.Length;
        Language.Describe(response.Headers, Speech.Current);
        Links.Describe(httpContext);
        return response.Body.WriteAsync(bytes).AsTask();
    }

    private static bool IsMarkup(string contentType) =>
        contentType.StartsWith("image/svg+xml", StringComparison.Ordinal)
        || contentType.StartsWith(HtmlPage.MediaType, StringComparison.Ordinal);

    // Attributes hold places and sizes; texts of a caller stand between the tags.
    [GeneratedRegex("<[^<>]*?(?:NaN|∞|Infinity)[^<>]*>", RegexOptions.CultureInvariant)]
    private static partial Regex NotFiniteInTag();
}
