using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Practice;

namespace ConeService.Api.Features.Limits;

/// <summary>Limits of exposure and of food contact.</summary>
internal static class LimitEndpoints
{
    public static void MapLimits(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/limits", List).WithQuery("jurisdiction", "substance")
            .Describe("listLimits", Tags.Practice).Answers<LimitList>(Csv.MediaType).Problems(406);
        routes.MapRead("/limits/{id}", One).WithQuery().Describe("getLimit", Tags.Practice).Answers<LimitDetail>().Problems(400, 404);
    }

    /// <summary>The limits.</summary>
    /// <remarks>
    /// What people breathe at work, each with body and year, and what ware may give off, each with jurisdiction. Only a leach test
    /// tells; local codes and licensed practice decide.
    /// </remarks>
    /// <param name="jurisdiction">Where it applies: european-union, usa, united-kingdom and others, or short eu, us, uk. Left out:
    /// all.</param>
    /// <param name="substance">A substance such as silica or lead, its formula, or the metal that ware gives off. Left out: all.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(string? jurisdiction, string? substance, HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Filtered(
            request, snapshots.Current, "limits", [jurisdiction, substance],
            static r => r.Practice.Limits(), r => r.Practice.Limits(jurisdiction, substance));

    /// <summary>One limit.</summary>
    /// <remarks>
    /// A limit of exposure (such as silica-osha-pel) or of food contact (such as lead-flatware-fda) with the cautions it belongs
    /// to.
    /// </remarks>
    /// <param name="id">Id of the limit.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("limit/" + id, id, static (r, x) => JsonBody.Cacheable(r.Practice.Limit(x)));
}
