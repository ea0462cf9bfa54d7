using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Firing.Practice;
using ConeService.Firing.Practice.Answers;

namespace ConeService.Api.Features.Processes;

/// <summary>The firing processes.</summary>
internal static class ProcessEndpoints
{
    public static void MapProcesses(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/processes", List).WithQuery().Describe("listProcesses", Tags.Practice).Answers<ProcessList>();
        routes.MapRead("/processes/{id}", One).WithQuery().Describe("getProcess", Tags.Practice).Answers<ProcessDetail>().Problems(400, 404);
    }

    /// <summary>The firing processes.</summary>
    /// <remarks>Kilns, atmosphere, cones, what it does to a pot and to the people near it, and its cautions.</remarks>
    internal static IResult List(SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("processes", 0, static (s, _) => JsonBody.Cacheable(s.Part(static x => new ProcessDescriber(x.Dataset)).List()));

    /// <summary>One firing process.</summary>
    /// <remarks>With what is added and when, its cautions, exposure limits, and what can be said of food: only a leach test tells.</remarks>
    /// <param name="id">Id of the process.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots)
    {
        var snapshot = snapshots.Current;
        var current = snapshot.Dataset.CurrentId("processes", id);
        var found = snapshot.Dataset.Processes.FirstOrDefault(r => r.Id == current)
            ?? throw NotFound.Refuse("process", id, snapshot.Dataset.Processes.Select(r => r.Id), "/v1/processes");
        return snapshot.Prepare("process/" + found.Id, found, static (s, row) => JsonBody.Cacheable(s.Part(static x => new ProcessDescriber(x.Dataset)).Describe(row)));
    }
}
