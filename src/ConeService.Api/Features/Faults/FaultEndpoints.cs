using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Study;

namespace ConeService.Api.Features.Faults;

/// <summary>The faults of ware.</summary>
internal static class FaultEndpoints
{
    public static void MapFaults(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/faults", List).WithQuery("stage")
            .Describe("listFaults", Tags.Study).Answers<FaultList>(Csv.MediaType).Problems(406);
        routes.MapRead("/faults/{id}", One).WithQuery().Describe("getFault", Tags.Study).Answers<FaultDetail>().Problems(400, 404);
    }

    /// <summary>The faults of ware.</summary>
    /// <remarks>Bloating, crazing, crawling, dunting and others: how each is told by looking, why it happens, and what to change.</remarks>
    /// <param name="stage">Stage of the work at which it shows: firing, cooling, opening or use. Left out: all.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(string? stage, HttpRequest request, SnapshotHolder snapshots) => ListAnswer.Filtered(
        request, snapshots.Current, "faults", [stage], static r => r.Study.Faults(), r => r.Study.Faults(stage));

    /// <summary>One fault of ware.</summary>
    /// <remarks>Its causes with what gives each away and what to change, faults it is mistaken for, cautions and landmarks.</remarks>
    /// <param name="id">Id of the fault.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("fault/" + id, id, static (r, x) => JsonBody.Cacheable(r.Study.Fault(x)));
}
