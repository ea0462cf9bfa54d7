using ConeService.Api.Http;
using ConeService.Contract.Conversions;

namespace ConeService.Api.Features.Conversions;

/// <summary>A conversion request read from JSON or CSV.</summary>
/// <param name="Value">The request.</param>
/// <param name="Rows">Of a CSV the line of the file each line stands in, by which findings name it; null for JSON.</param>
internal sealed record ConversionBody(ConversionRequest Value, IReadOnlyList<long>? Rows)
{
    /// <summary>Binds the parameter by the Content-Type header.</summary>
    public static async ValueTask<ConversionBody?> BindAsync(HttpContext context)
    {
        var request = context.Request;
        return RequestContent.Choose(request, JsonBody.MediaType, Csv.MediaType) == Csv.MediaType
            ? await ConversionCsv.ReadAsync(request)
            : new(await JsonBody.ReadAsync<ConversionRequest>(request), null);
    }
}
