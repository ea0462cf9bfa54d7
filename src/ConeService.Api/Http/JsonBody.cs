using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;

namespace ConeService.Api.Http;

/// <summary>Reads and writes JSON bodies by the service's own strict options.</summary>
internal static class JsonBody
{
    public const string MediaType = "application/json";

    private const string ContentType = MediaType + "; charset=utf-8";

    // A reader of a stream skips it (RFC 8259, 8.1).
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>A finished JSON body that may be cached, with its page beside it.</summary>
    public static PreparedBody Cacheable<T>(T value) => new(Bytes(value), ContentType, negotiated: true) { HasPage = true };

    /// <summary>The answer to a POST; never cached.</summary>
    /// <exception cref="ArgumentException">It holds a number that is not finite.</exception>
    public static WholeBody Posted<T>(T value) => new WholeBody(Bytes(value), ContentType);

    /// <summary>A value as JSON.</summary>
    /// <exception cref="ArgumentException">It holds a number that is not finite.</exception>
    public static byte[] Bytes<T>(T value) => JsonSerializer.SerializeToUtf8Bytes(value, TypeInfo<T>());

    /// <summary>Reads a body.</summary>
    /// <exception cref="RefusedException">The body is empty, malformed, or has unknown or repeated members.</exception>
    public static async Task<T> ReadAsync<T>(HttpRequest request)
    {
        var (value, unread) = await ReadLenientlyAsync<T>(request);
        return unread.Count == 0 ? value : throw new RefusedException(unread);
    }

    /// <summary>Reads a body as far as it can be read, so that everything wrong with it can be told together.</summary>
    /// <exception cref="RefusedException">The body is empty or malformed.</exception>
    public static async Task<(T Value, IReadOnlyList<Finding> Unread)> ReadLenientlyAsync<T>(HttpRequest request)
    {
        using var whole = new MemoryStream();
        await request.Body.CopyToAsync(whole, request.HttpContext.RequestAborted);
        ReadOnlyMemory<byte> body = whole.GetBuffer().AsMemory(0, (int)whole.Length);
        if (body.Span.StartsWith(ByteOrderMark)) body = body[ByteOrderMark.Length..];
        try
        {
            body = ListBounds.Keep(body, typeof(T));
            return (JsonSerializer.Deserialize(body.Span, TypeInfo<T>()) ?? throw JsonFindings.Refuse("null", typeof(T)), []);
        }
        catch (JsonException failure)
        {
            return LenientBody.Read(body, failure, TypeInfo<T>());
        }
    }

    private static JsonTypeInfo<T> TypeInfo<T>() => (JsonTypeInfo<T>)ConeJson.Options.GetTypeInfo(typeof(T));
}
