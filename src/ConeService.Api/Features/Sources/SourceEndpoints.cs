using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Data;
using ConeService.Firing.Answers;

namespace ConeService.Api.Features.Sources;

/// <summary>The bibliography.</summary>
internal static class SourceEndpoints
{
    public static void MapSources(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/sources", List).WithQuery().Describe("listSources", Tags.Data).Answers<SourceList>();
        routes.MapRead("/sources/{id}", One).WithQuery().Describe("getSource", Tags.Data).Answers<SourceDetail>().Problems(404);
    }

    /// <summary>The bibliography.</summary>
    /// <remarks>Every source that a value names, and how much of it was seen.</remarks>
    internal static IResult List(SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("sources", 0, static (s, _) => JsonBody.Cacheable(new SourceList(s.Dataset.VersionId, s.Dataset.Sources)));

    /// <summary>One source.</summary>
    /// <remarks>The source and how many rows of each table cite it.</remarks>
    /// <param name="id">Id of the source, as answers name it.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots)
    {
        var snapshot = snapshots.Current;
        var source = snapshot.Dataset.Sources.FirstOrDefault(s => s.Id == id) ?? throw Unknown(id, snapshot.Dataset);
        return snapshot.Prepare("source/" + id, source, static (s, row) => JsonBody.Cacheable(new SourceDetail(s.Dataset.VersionId, row, Uses(s.Dataset, row.Id))));
    }

    private static List<SourceUse> Uses(Dataset data, string id) =>
        [.. data.Citations[id].GroupBy(c => c.Table).Select(g => new SourceUse(g.Key, g.Count()))];

    private static RefusedException Unknown(string id, Dataset data)
    {
        var near = NearMatches.Find(id, data.Sources.Select(s => s.Id));
        return new(new Finding("not-found", "id", id, $"There is no source “{id}”.", near, near.Count > 0 ? $"Probably {near[0]}." : "All sources are listed at /v1/sources."));
    }
}
