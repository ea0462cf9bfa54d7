using ConeService.Api.Http;
using ConeService.Firing.Answers;
using ConeService.Firing.Cones.Conversions;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Features.Conversions;

/// <summary>A conversion request read from JSON or CSV.</summary>
/// <param name="Value">The request.</param>
/// <param name="Rows">Of a CSV the line of the file each line stands in, by which findings name it; null for JSON.</param>
internal sealed record ConversionBody(ConversionRequest Value, IReadOnlyList<long>? Rows) : IRequestBody<ConversionRequest>
{
    /// <summary>Binds the parameter by the Content-Type header.</summary>
    public static async ValueTask<ConversionBody?> BindAsync(HttpContext context)
    {
        var request = context.Request;
        var type = MediaTypeHeaderValue.TryParse(request.ContentType, out var parsed) ? parsed.MediaType.Value : null;
        if (string.Equals(type, Csv.MediaType, StringComparison.OrdinalIgnoreCase)) return await ConversionCsv.ReadAsync(request);
        if (string.Equals(type, JsonBody.MediaType, StringComparison.OrdinalIgnoreCase)) return new(await JsonBody.ReadAsync<ConversionRequest>(request), null);
        throw new RefusedException(new Finding(
            "content-type-unsupported", "Content-Type", request.ContentType, "The body must be JSON or CSV, and the Content-Type header must say which.", [JsonBody.MediaType, Csv.MediaType],
            "curl sends form data unless told: -H 'Content-Type: text/csv'."));
    }
}
