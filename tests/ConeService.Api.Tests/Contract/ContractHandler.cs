using System.Globalization;
using System.IO.Compression;
using System.Text.Json;

namespace ConeService.Api.Tests.Contract;

/// <summary>
/// Holds every answer that a test gets against the document: its status and its media type must be told there, and its JSON must be
/// what the schema says.
/// </summary>
internal sealed class ContractHandler : DelegatingHandler
{
    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        var response = await base.SendAsync(request, cancellationToken);
        var document = OpenApiDocumentFile.Committed;
        var (status, method) = ((int)response.StatusCode, request.Method.Method.ToLowerInvariant());
        // What is not asked of an operation, and what came without a body, has no schema.
        if (document.RouteOf(request.RequestUri!.AbsolutePath) is not { } route || status == 304) return response;
        if (!document.Root.GetProperty("paths").GetProperty(route).TryGetProperty(method, out var operation)) return response;
        await response.Content.LoadIntoBufferAsync(cancellationToken);
        var asked = $"{method} {request.RequestUri}";
        var code = status.ToString(CultureInfo.InvariantCulture);
        Assert.True(operation.GetProperty("responses").TryGetProperty(code, out var told), $"{asked} answered {code}, untold.");
        if (response.Content.Headers.ContentType?.MediaType is not { } type) return response;
        Assert.True(told.GetProperty("content").TryGetProperty(type, out var media), $"{asked} answered {code} as {type}, untold.");
        if (!type.EndsWith("json", StringComparison.Ordinal)) return response;
        using var body = JsonDocument.Parse(await Decoded(response.Content, cancellationToken));
        var departures = document.Departures(body.RootElement, media.GetProperty("schema"));
        Assert.True(departures.Count == 0, $"{asked} answered {code} otherwise than told: {string.Join("; ", departures.Take(5))}");
        return response;
    }

    // As it came: who asks for a coding wants to see it, and the content stays as it is.
    private static async Task<byte[]> Decoded(HttpContent content, CancellationToken cancel)
    {
        var bytes = await content.ReadAsByteArrayAsync(cancel);
        using var coded = new MemoryStream(bytes);
        using Stream plain = content.Headers.ContentEncoding.SingleOrDefault() switch
        {
            "gzip" => new GZipStream(coded, CompressionMode.Decompress),
            "br" => new BrotliStream(coded, CompressionMode.Decompress),
            _ => coded,
        };
        using var whole = new MemoryStream();
        await plain.CopyToAsync(whole, cancel);
        return whole.ToArray();
    }
}
