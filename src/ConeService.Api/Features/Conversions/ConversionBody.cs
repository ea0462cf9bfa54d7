using ConeService.Api.Http;
using ConeService.Contract.Conversions;
using ConeService.Firing.Cones.Conversions;

namespace ConeService.Api.Features.Conversions;

/// <summary>A conversion request read from JSON or CSV.</summary>
/// <param name="Value">The request.</param>
/// <param name="IsCsv">True when it came as CSV: findings then name lines and columns.</param>
internal sealed record ConversionBody(ConversionRequest Value, bool IsCsv)
{
    /// <summary>Binds the parameter by the Content-Type header.</summary>
    public static async ValueTask<ConversionBody?> BindAsync(HttpContext context)
    {
        var request = context.Request;
        return RequestContent.Choose(request, JsonBody.MediaType, Csv.MediaType) == Csv.MediaType
            ? new(await ConversionCsv.ReadAsync(request), true)
            : new(await JsonBody.ReadAsync<ConversionRequest>(request), false);
    }
}
