using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.OpenApi;
using ConeService.Contract.Conversions;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.Conversions;

/// <summary>Batches of conversions.</summary>
internal static class ConversionEndpoints
{
    public static void MapConversions(this IEndpointRouteBuilder routes) =>
        routes.MapPosted("/conversions", Convert).WithQuery()
            .Accepts<ConversionRequest>(JsonBody.MediaType, Csv.MediaType)
            .Describe("convert", Tags.Cones).Answers<ConversionAnswer>(Csv.MediaType).Problems(406, 413, 415);

    /// <summary>Up to 1,000 conversions at once.</summary>
    /// <remarks>Each line holds a cone (answered with its end point) or a temperature (answered with the cone reached). JSON or
    /// CSV in and out. The CSV columns are cone, temperature, rate and chart; comma, semicolon or tab, and a decimal comma where the
    /// comma does not separate; columns of your own come back in their places, unaltered, in a CSV answer. A cone is written 06 or
    /// cone 06, and comes back as cone 06; a column of bare numbers that may have lost its zeros is warned of. A bad line gets its
    /// problems, the good lines their answers.</remarks>
    /// <param name="body">The request, from JSON or CSV.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Convert(ConversionBody body, HttpRequest request, SnapshotHolder snapshots)
    {
        var wantsCsv = Negotiation.Choose(request, JsonBody.MediaType, Csv.MediaType) == Csv.MediaType;
        var answer = snapshots.Current.Reference.Cones.Convert(body.Value, body.Sheet?.Lines);
        Mistakes.Keep(request.HttpContext, answer.Lines.Select(l => (l.Problems, l.MoreProblems)));
        if (wantsCsv) return WholeBody.Text(answer, ConversionCsvWriter.Write(body, answer), Csv.MediaType + "; charset=utf-8");
        return JsonBody.Posted(body.Sheet is { Carried: [_, ..] carried }
            ? answer with { Warnings = [.. answer.Warnings, NotCarried(carried)] }
            : answer);
    }

    // JSON has no place for them.
    private static ConversionWarning NotCarried(IReadOnlyList<string> columns) => new(
        WarningCodes.ColumnsIgnored, Message.Of("conversions.columns-ignored", ("columns", columns.Take(20).ToArray())), []);
}
