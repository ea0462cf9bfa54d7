using ConeService.Api.Http;
using ConeService.Contract.Conversions;

namespace ConeService.Api.Features.Conversions;

/// <summary>A conversion request read from JSON or CSV.</summary>
/// <param name="Value">The request.</param>
/// <param name="Sheet">Of a CSV the file itself; null for JSON.</param>
internal sealed record ConversionBody(ConversionRequest Value, ConversionSheet? Sheet)
{
    /// <summary>Binds the parameter by the Content-Type header.</summary>
    public static async ValueTask<ConversionBody?> BindAsync(HttpContext context)
    {
        var request = context.Request;
        return RequestContent.Choose(request, JsonBody.MediaType, Csv.MediaType) == Csv.MediaType
            ? await ConversionCsvReader.ReadAsync(request)
            : new(await JsonBody.ReadAsync<ConversionRequest>(request), null);
    }
}
