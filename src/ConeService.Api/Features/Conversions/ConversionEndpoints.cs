using System.Globalization;
using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Conversions;

namespace ConeService.Api.Features.Conversions;

/// <summary>Batches of conversions.</summary>
internal static class ConversionEndpoints
{
    public static void MapConversions(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/conversions", Convert).WithQuery()
            .Accepts<ConversionRequest>(JsonBody.MediaType, Csv.MediaType)
            .Describe("convert", Tags.Cones).Answers<ConversionAnswer>(Csv.MediaType).Problems(406, 413, 415);

    /// <summary>Up to 1,000 conversions at once.</summary>
    /// <remarks>Each line holds a cone (answered with its end point) or a temperature (answered with the cone reached). JSON or
    /// CSV in and out: the CSV columns are cone, temperature, rate and chart. A bad line gets its problems, the good lines their
    /// answers.</remarks>
    /// <param name="body">The request, from JSON or CSV.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Convert(ConversionBody body, HttpRequest request, SnapshotHolder snapshots)
    {
        var wantsCsv = Negotiation.Choose(request, JsonBody.MediaType, Csv.MediaType) == Csv.MediaType;
        var answer = snapshots.Current.Reference.Cones.Convert(body.Value, body.Rows is { } rows
            ? (index, name) => string.Create(CultureInfo.InvariantCulture, $"line {rows[index]}, {name}")
            : (index, name) => string.Create(CultureInfo.InvariantCulture, $"/lines/{index}/{name}"));
        return wantsCsv
            ? WholeBody.Text(answer, ConversionCsv.Write(body.Value, answer), Csv.MediaType + "; charset=utf-8")
            : JsonBody.Posted(answer);
    }
}
