using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Conversions;
using ConeService.Firing.Cones.Conversions;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Features.Conversions;

/// <summary>A conversion request read from JSON or CSV.</summary>
/// <param name="Value">The request.</param>
/// <param name="IsCsv">True when it came as CSV: findings then name lines and columns.</param>
internal sealed record ConversionBody(ConversionRequest Value, bool IsCsv) : IRequestBody<ConversionRequest>
{
    /// <summary>Binds the parameter by the Content-Type header.</summary>
    public static async ValueTask<ConversionBody?> BindAsync(HttpContext context)
    {
        var request = context.Request;
        var type = MediaTypeHeaderValue.TryParse(request.ContentType, out var parsed) ? parsed.MediaType.Value : null;
        if (string.Equals(type, Csv.MediaType, StringComparison.OrdinalIgnoreCase)) return new(await ConversionCsv.ReadAsync(request), true);
        if (string.Equals(type, JsonBody.MediaType, StringComparison.OrdinalIgnoreCase)) return new(await JsonBody.ReadAsync<ConversionRequest>(request), false);
        throw new RefusedException(new Finding(
            "content-type-unsupported", "Content-Type", request.ContentType, "The body must be JSON or CSV, and the Content-Type header must say which.", [JsonBody.MediaType, Csv.MediaType],
            "curl sends form data unless told: -H 'Content-Type: text/csv'."));
    }
}
