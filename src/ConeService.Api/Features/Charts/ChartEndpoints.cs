using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Cones;

namespace ConeService.Api.Features.Charts;

/// <summary>The published charts.</summary>
internal static class ChartEndpoints
{
    public static void MapCharts(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/charts", List).WithQuery().Describe("listCharts", Tags.Cones).Answers<ChartList>(Csv.MediaType).Problems(406);
        routes.MapRead("/charts/{chart}", Detail).WithQuery()
            .Describe("getChart", Tags.Cones).Answers<ChartDetail>(Csv.MediaType).Problems(404, 406);
        routes.MapRead("/charts/{chart}/cells/{cone}@{rate}", Cell).WithQuery()
            .Describe("getChartCell", Tags.Cones).Answers<ChartCellDetail>().Problems(400, 404);
    }

    /// <summary>All published charts.</summary>
    /// <remarks>Each chart with its cone form, the rates it prints, its source, and how many of its values have each confidence.</remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "charts", static r => r.Cones.Charts());

    /// <summary>One chart with every printed end point.</summary>
    /// <remarks>Every value as printed, in the order in which the cones go down, with its source and confidence.</remarks>
    /// <param name="chart">Name of the chart, from /v1/charts.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Detail(string chart, HttpRequest request, SnapshotHolder snapshots) => ListAnswer.Prepared(
        request, snapshots.Current, "chart/" + chart, chart, static (r, id) => r.Cones.Chart(id), "endPoints", ("chart", chart));

    /// <summary>One printed cell of a chart.</summary>
    /// <remarks>With its source and where in it the cell stands, as far as that was recorded: what computedFrom of an answer leads
    /// to.</remarks>
    /// <param name="chart">Name of the chart, from /v1/charts.</param>
    /// <param name="cone">The cone, as the chart prints it.</param>
    /// <param name="rate">The rate as the chart prints it, °C/h; unstated where it states none.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Cell(string chart, string cone, string rate, SnapshotHolder snapshots) => snapshots.Current.Prepare(
        $"cell/{chart}/{cone}@{rate}", (chart, cone, rate), static (r, x) => JsonBody.Cacheable(r.Package.Cell(x.chart, x.cone, x.rate)));
}
