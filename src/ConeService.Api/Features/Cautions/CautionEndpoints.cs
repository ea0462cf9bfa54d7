using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Firing.Practice;
using ConeService.Firing.Practice.Answers;

namespace ConeService.Api.Features.Cautions;

/// <summary>The cautions.</summary>
internal static class CautionEndpoints
{
    public static void MapCautions(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/cautions", List).WithQuery().Describe("listCautions", Tags.Practice).Answers<CautionList>();
        routes.MapRead("/cautions/{id}", One).WithQuery().Describe("getCaution", Tags.Practice).Answers<CautionDetail>().Problems(400, 404);
    }

    /// <summary>The cautions.</summary>
    /// <remarks>Hazards of firing and materials: who is exposed, when, and what controls it. Local codes and licensed practice decide.</remarks>
    internal static IResult List(SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("cautions", 0, static (s, _) => JsonBody.Cacheable(s.Part(static x => new CautionDescriber(x.Dataset)).Cautions()));

    /// <summary>One caution.</summary>
    /// <remarks>With the limits of exposure and food contact, processes and colorants that it belongs to.</remarks>
    /// <param name="id">Id of the caution.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots)
    {
        var snapshot = snapshots.Current;
        var data = snapshot.Dataset;
        var current = data.CurrentId("cautions", id);
        var found = data.Cautions.FirstOrDefault(r => r.Id == current)
            ?? throw NotFound.Refuse("caution", id, data.Cautions.Select(r => r.Id), "/v1/cautions");
        return snapshot.Prepare("caution/" + found.Id, found, static (s, row) => JsonBody.Cacheable(s.Part(static x => new CautionDescriber(x.Dataset)).Describe(row)));
    }
}
