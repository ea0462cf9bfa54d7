using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Cones;

namespace ConeService.Api.Features.ConeFacts;

/// <summary>How cones behave: bending, soaking, atmosphere, tolerance, editions.</summary>
internal static class ConeFactEndpoints
{
    public static void MapConeFacts(this IEndpointRouteBuilder routes) =>
        routes.MapRead("/cone-facts", List).WithQuery("topic")
            .Describe("listConeFacts", Tags.Cones).Answers<ConeFactList>(Csv.MediaType).Problems(406);

    /// <summary>How cones behave.</summary>
    /// <remarks>One statement a fact, with the value as the source gives it, its source and confidence.</remarks>
    /// <param name="topic">A topic, such as soak, atmosphere or small-cones. Left out: all facts.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(string? topic, HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "cone-facts/" + topic, topic, static (r, t) => r.Cones.Facts(t));
}
