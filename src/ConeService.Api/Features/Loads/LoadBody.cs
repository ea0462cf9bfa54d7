using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Firing.Loads;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Features.Loads;

/// <summary>A load read from JSON.</summary>
internal sealed record LoadBody(LoadRequest Value) : IRequestBody<LoadRequest>
{
    /// <summary>Binds the parameter.</summary>
    public static async ValueTask<LoadBody?> BindAsync(HttpContext context) => new(await JsonOnly.ReadAsync<LoadRequest>(context.Request));
}

/// <summary>A pairing read from JSON.</summary>
internal sealed record PairingBody(PairingRequest Value) : IRequestBody<PairingRequest>
{
    /// <summary>Binds the parameter.</summary>
    public static async ValueTask<PairingBody?> BindAsync(HttpContext context) => new(await JsonOnly.ReadAsync<PairingRequest>(context.Request));
}

/// <summary>Reads a body that is JSON and nothing else.</summary>
internal static class JsonOnly
{
    /// <exception cref="RefusedException">The body is of another media type, or not JSON of this form.</exception>
    public static Task<T> ReadAsync<T>(HttpRequest request)
    {
        var type = MediaTypeHeaderValue.TryParse(request.ContentType, out var parsed) ? parsed.MediaType.Value : null;
        return string.Equals(type, JsonBody.MediaType, StringComparison.OrdinalIgnoreCase)
            ? JsonBody.ReadAsync<T>(request)
            : throw new RefusedException(new Finding(
                "content-type-unsupported", "Content-Type", request.ContentType, "The body must be JSON, and the Content-Type header must say so.", [JsonBody.MediaType],
                "curl sends form data unless told: -H 'Content-Type: application/json'."));
    }
}
