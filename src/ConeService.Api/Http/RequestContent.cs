using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Http;

/// <summary>Which of the media types that an address reads a body comes as.</summary>
internal static class RequestContent
{
    private static readonly string[] Utf16 = ["utf-16", "utf-16le", "utf-16be"];

    /// <summary>The media type of the body.</summary>
    /// <param name="request">The request.</param>
    /// <param name="read">The media types that the address reads, the usual one first.</param>
    /// <exception cref="RefusedException">The body comes as none of them, or does not say; or it is compressed, or in letters that are
    /// not read.</exception>
    public static string Choose(HttpRequest request, params string[] read)
    {
        if (request.Headers.ContentEncoding is [{ Length: > 0 } coding, ..] && coding != "identity")
        {
            throw new RefusedException(new Finding(
                FindingCodes.ContentEncodingUnsupported, "Content-Encoding", coding,
                Message.Of("http.content-encoding-not-read", ("encoding", coding)), Message.Verbatim(["identity"]),
                Message.Of("http.send-uncompressed")));
        }

        var type = MediaTypeHeaderValue.TryParse(request.ContentType, out var parsed) ? parsed.MediaType.Value : null;
        if (parsed?.Charset.Value?.Trim('"') is { Length: > 0 } charset)
        {
            // A log may come in UTF-16, which its first two bytes tell; JSON is UTF-8 (RFC 8259, 8.1).
            string[] charsets = ["utf-8", "us-ascii", .. type == JsonBody.MediaType ? [] : Utf16];
            if (!charsets.Contains(charset, StringComparer.OrdinalIgnoreCase))
            {
                throw new RefusedException(new Finding(
                    FindingCodes.ContentTypeUnsupported, "Content-Type", request.ContentType,
                    Message.Of("http.charset-not-read", ("charset", charset)), Message.Verbatim(charsets)));
            }
        }

        return read.FirstOrDefault(r => string.Equals(r, type, StringComparison.OrdinalIgnoreCase))
            ?? throw Refuse(request.ContentType, read);
    }

    private static RefusedException Refuse(string? type, string[] read) => new(read.Length == 1
        ? new Finding(
            FindingCodes.ContentTypeUnsupported, "Content-Type", type, Message.Of("http.body-must-be-json"), Message.Verbatim(read),
            Message.Of("http.curl-json"))
        : new Finding(
            FindingCodes.ContentTypeUnsupported, "Content-Type", type, Message.Of("http.body-must-be-json-or-csv"), Message.Verbatim(read),
            Message.Of("http.curl-csv")));
}

/// <summary>A request that comes as JSON and as nothing else.</summary>
/// <typeparam name="T">The request of the contract.</typeparam>
/// <param name="Value">The request, as far as its body has the form of one; the rest is among the mistakes of the request.</param>
internal sealed record JsonRequest<T>(T Value)
{
    /// <summary>Binds the parameter.</summary>
    public static async ValueTask<JsonRequest<T>?> BindAsync(HttpContext context)
    {
        RequestContent.Choose(context.Request, JsonBody.MediaType);
        return new(await JsonBody.ReadAsync<T>(context.Request));
    }
}
