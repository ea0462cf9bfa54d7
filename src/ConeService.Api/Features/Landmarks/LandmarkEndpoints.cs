using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Study;

namespace ConeService.Api.Features.Landmarks;

/// <summary>The landmarks of a firing.</summary>
internal static class LandmarkEndpoints
{
    public static void MapLandmarks(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/landmarks", List).WithQuery("phase")
            .Describe("listLandmarks", Tags.Study).Answers<LandmarkList>(Csv.MediaType).Problems(406);
        routes.MapRead("/landmarks/{id}", One).WithQuery()
            .Describe("getLandmark", Tags.Study).Answers<LandmarkDetail>().Problems(400, 404);
    }

    /// <summary>The landmarks of a firing.</summary>
    /// <remarks>What happens in ware, glaze and kiln at which temperature, and what a schedule does about it.</remarks>
    /// <param name="phase">heating, cooling, either or look (how the kiln looks). Left out: all.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(string? phase, HttpRequest request, SnapshotHolder snapshots) => ListAnswer.Filtered(
        request, snapshots.Current, "landmarks", [phase], static r => r.Study.Landmarks(), r => r.Study.Landmarks(phase));

    /// <summary>One landmark of a firing.</summary>
    /// <remarks>With its cautions and the faults of ware that are tied to it.</remarks>
    /// <param name="id">Id of the landmark.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("landmark/" + id, id, static (r, x) => JsonBody.Cacheable(r.Study.Landmark(x)));
}
