using ConeService.Api.Features.Cards;
using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.OpenApi;
using ConeService.Contract.Cones;

namespace ConeService.Api.Features.Cones;

/// <summary>The scale, one cone, and its end point at any rate.</summary>
internal static class ConeEndpoints
{
    public static void MapCones(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/cones", List).WithQuery().Describe("listCones", Tags.Cones).Answers<ConeList>(Csv.MediaType).Problems(406)
            .AnswersByPath();
        routes.MapRead("/cones/{cone}", One).WithQuery().Describe("getCone", Tags.Cones).Answers<ConeDescription>().AnswersByPath();
        routes.MapRead("/cones/{cone}/end-point", EndPointAt).WithQuery("rate", "chart", "unit")
            .Describe("getEndPoint", Tags.Cones).Answers<EndPoint>(OneLine.MediaType).Problems(406);
    }

    /// <summary>The scale.</summary>
    /// <remarks>Every cone that some chart prints, in the order in which they go down, with its end point on the default chart.</remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "cones", static r => r.Cones.List());

    /// <summary>One cone.</summary>
    /// <remarks>Its neighbours, the cone it is confused with and how far apart they are, every printed end point, and why charts
    /// differ.</remarks>
    /// <param name="cone">The cone: 06, o6, ^6, cone 6, Δ6, 05.5, 05½.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string cone, SnapshotHolder snapshots)
    {
        var snapshot = snapshots.Current;
        var found = snapshot.Reference.Cones.Read(Unescape(cone));
        return snapshot.Prepare("cone/" + found, found, static (r, c) =>
        {
            var answer = r.Cones.Describe(c);
            return JsonBody.Cacheable(answer).WithPage(() => ConeCard.Page(c, r));
        });
    }

    /// <summary>The end point of a cone at a heating rate.</summary>
    /// <remarks>Printed where the chart prints it, otherwise computed by the curve through the printed values; with uncertainty,
    /// basis and sources. Answers <c>1222 °C (2232 °F)</c> as text/plain, and with a unit the bare number, for a cell of a
    /// spreadsheet: <c>/v1/cones/6/end-point.txt?rate=60C/h&amp;unit=C</c> is <c>1222</c>.</remarks>
    /// <param name="cone">The cone: 06, o6, ^6, cone 6, Δ6, 05.5, 05½.</param>
    /// <param name="rate">Heating rate over the last 100 °C with its unit: 60C/h, 108F/h, 1C/min. Left out: the chart's usual
    /// rate, said in assumed.</param>
    /// <param name="chart">Name of the chart, from /v1/charts. Left out: witness-self-supporting, said in assumed.</param>
    /// <param name="unit">Of text/plain: C or F for the number alone, in whole degrees. Left out: the sentence with both. Other
    /// forms always hold both.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult EndPointAt(
        string cone, string? rate, string? chart, string? unit, HttpRequest request, SnapshotHolder snapshots)
    {
        var read = Mistakes.Try(request.HttpContext, () => OneLine.Unit(unit));
        return OneLine.Choose(
            request, snapshots.Current.Reference.Cones.EndPoint(Unescape(cone), rate, chart), answer => OneLine.Of(answer, read));
    }

    // Routing leaves an escaped slash alone: “05 1/2” arrives as “05 1%2F2”.
    private static string Unescape(string text) => text.Replace("%2F", "/", StringComparison.OrdinalIgnoreCase);
}
