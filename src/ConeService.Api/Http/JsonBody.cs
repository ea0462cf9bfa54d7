using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ConeService.Api.Http.Problems;
using ConeService.Api.Http.Reading;
using ConeService.Contract.Batches;
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

    /// <summary>The answer to several questions; where it is given up for a mistake, what is wrong with each is told.</summary>
    /// <exception cref="ArgumentException">It holds a number that is not finite.</exception>
    public static WholeBody Posted<T>(BatchAnswer<T> answer, HttpRequest request)
        where T : class
    {
        Mistakes.Keep(request.HttpContext, answer.Items.Select(i => (i.Problems, i.MoreProblems)));
        return Posted(answer);
    }

    /// <summary>A value as JSON.</summary>
    /// <exception cref="ArgumentException">It holds a number that is not finite.</exception>
    public static byte[] Bytes<T>(T value) => JsonSerializer.SerializeToUtf8Bytes(value, TypeInfo<T>());

    /// <summary>Reads a body, as far as it has the form that it should have; what of it has not goes to the mistakes of the
    /// request.</summary>
    public static async Task<T> ReadAsync<T>(HttpRequest request)
    {
        using var whole = new MemoryStream();
        await request.Body.CopyToAsync(whole, request.HttpContext.RequestAborted);
        ReadOnlyMemory<byte> body = whole.GetBuffer().AsMemory(0, (int)whole.Length);
        if (body.Span.StartsWith(ByteOrderMark)) body = body[ByteOrderMark.Length..];
        JsonException? failure = null;
        try
        {
            body = ListBounds.Keep(body, typeof(T));
            if (JsonSerializer.Deserialize(body.Span, TypeInfo<T>()) is { } value) return value;
        }
        catch (JsonException strict)
        {
            failure = strict;
        }

        return ShapeReader.Read(body, failure, TypeInfo<T>(), request.HttpContext);
    }

    private static JsonTypeInfo<T> TypeInfo<T>() => (JsonTypeInfo<T>)ConeJson.Options.GetTypeInfo(typeof(T));
}
