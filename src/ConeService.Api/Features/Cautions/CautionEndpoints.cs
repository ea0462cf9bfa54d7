using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Practice;

namespace ConeService.Api.Features.Cautions;

/// <summary>The cautions.</summary>
internal static class CautionEndpoints
{
    public static void MapCautions(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/cautions", List).WithQuery("appliesTo", "stage")
            .Describe("listCautions", Tags.Practice).Answers<CautionList>(Csv.MediaType).Problems(406);
        routes.MapRead("/cautions/{id}", One).WithQuery().Describe("getCaution", Tags.Practice).Answers<CautionDetail>().Problems(400, 404);
    }

    /// <summary>The cautions.</summary>
    /// <remarks>
    /// Hazards of firing and materials: who is exposed, when, and what controls it. Local codes and licensed practice decide.
    /// </remarks>
    /// <param name="appliesTo">What it belongs to, such as lead, gas-kiln or raku. Left out: all.</param>
    /// <param name="stage">Stage of the work: mixing, glazing, loading, firing, cooling, opening, maintenance or use. Left out:
    /// all.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(string? appliesTo, string? stage, HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Filtered(
            request, snapshots.Current, "cautions", [appliesTo, stage],
            static r => r.Practice.Cautions(), r => r.Practice.Cautions(appliesTo, stage));

    /// <summary>One caution.</summary>
    /// <remarks>With the limits of exposure and food contact, processes and colorants that it belongs to.</remarks>
    /// <param name="id">Id of the caution.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("caution/" + id, id, static (r, x) => JsonBody.Cacheable(r.Practice.Caution(x)));
}
