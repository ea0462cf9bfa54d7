using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Practice;

namespace ConeService.Api.Features.Processes;

/// <summary>The firing processes.</summary>
internal static class ProcessEndpoints
{
    public static void MapProcesses(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/processes", List).WithQuery("kiln", "atmosphere")
            .Describe("listProcesses", Tags.Practice).Answers<ProcessList>(Csv.MediaType).Problems(406);
        routes.MapRead("/processes/{id}", One).WithQuery()
            .Describe("getProcess", Tags.Practice).Answers<ProcessDetail>().Problems(400, 404);
    }

    /// <summary>The firing processes.</summary>
    /// <remarks>Kilns, atmosphere, cones, what it does to a pot and to the people near it, and its cautions.</remarks>
    /// <param name="kiln">What heats the kiln: electric, gas, oil, wood, charcoal, pit, open-fire or drum. Left out: all.</param>
    /// <param name="atmosphere">Atmosphere of the firing: oxidation, neutral or reduction. Left out: all.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(string? kiln, string? atmosphere, HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Filtered(
            request, snapshots.Current, "processes", [kiln, atmosphere],
            static r => r.Practice.Processes(), r => r.Practice.Processes(kiln, atmosphere));

    /// <summary>One firing process.</summary>
    /// <remarks>
    /// With what is added and when, its cautions, exposure limits, and what can be said of food: only a leach test tells.
    /// </remarks>
    /// <param name="id">Id of the process.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("process/" + id, id, static (r, x) => JsonBody.Cacheable(r.Practice.Process(x)));
}
