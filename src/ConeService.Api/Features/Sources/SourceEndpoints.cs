using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Datasets;

namespace ConeService.Api.Features.Sources;

/// <summary>The bibliography.</summary>
internal static class SourceEndpoints
{
    public static void MapSources(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/sources", List).WithQuery().Describe("listSources", Tags.Data).Answers<SourceList>(Csv.MediaType).Problems(406);
        routes.MapRead("/sources/{id}", One).WithQuery().Describe("getSource", Tags.Data).Answers<SourceDetail>().Problems(404);
    }

    /// <summary>The bibliography.</summary>
    /// <remarks>Every source that a value names, and how much of it was seen.</remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "sources", static r => r.Package.Sources());

    /// <summary>One source.</summary>
    /// <remarks>The source and how many rows of each table cite it.</remarks>
    /// <param name="id">Id of the source, as answers name it.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("source/" + id, id, static (r, x) => JsonBody.Cacheable(r.Package.Source(x)));
}
