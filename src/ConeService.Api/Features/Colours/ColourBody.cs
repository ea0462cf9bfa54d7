using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Firing.Colour;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Features.Colours;

/// <summary>A recipe read from JSON.</summary>
/// <param name="Value">The request.</param>
internal sealed record ColourBody(ColourRequest Value) : IRequestBody<ColourRequest>
{
    /// <summary>Binds the parameter by the Content-Type header.</summary>
    public static async ValueTask<ColourBody?> BindAsync(HttpContext context)
    {
        var request = context.Request;
        var type = MediaTypeHeaderValue.TryParse(request.ContentType, out var parsed) ? parsed.MediaType.Value : null;
        if (string.Equals(type, JsonBody.MediaType, StringComparison.OrdinalIgnoreCase)) return new(await JsonBody.ReadAsync<ColourRequest>(request));
        throw new RefusedException(new Finding(
            "content-type-unsupported", "Content-Type", request.ContentType, "The body must be JSON, and the Content-Type header must say so.", [JsonBody.MediaType],
            "curl sends form data unless told: -H 'Content-Type: application/json'."));
    }
}
