using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Firing.Practice;
using ConeService.Firing.Practice.Answers;

namespace ConeService.Api.Features.Limits;

/// <summary>Limits of exposure and of food contact.</summary>
internal static class LimitEndpoints
{
    public static void MapLimits(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/limits", List).WithQuery().Describe("listLimits", Tags.Practice).Answers<LimitList>();
        routes.MapRead("/limits/{id}", One).WithQuery().Describe("getLimit", Tags.Practice).Answers<LimitDetail>().Problems(400, 404);
    }

    /// <summary>The limits.</summary>
    /// <remarks>What people breathe at work, each with body and year, and what ware may give off, each with jurisdiction. Only a leach test tells; local codes and licensed practice decide.</remarks>
    internal static IResult List(SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("limits", 0, static (s, _) => JsonBody.Cacheable(Describer(s).Limits()));

    /// <summary>One limit.</summary>
    /// <remarks>A limit of exposure (such as silica-osha-pel) or of food contact (such as lead-flatware-fda) with the cautions it belongs to.</remarks>
    /// <param name="id">Id of the limit.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots)
    {
        var snapshot = snapshots.Current;
        var data = snapshot.Dataset;
        var (breathed, eaten) = (data.CurrentId("exposure-limits", id), data.CurrentId("food-contact-limits", id));
        if (data.ExposureLimits.FirstOrDefault(l => l.Id == breathed) is { } exposure)
            return snapshot.Prepare("limit/" + exposure.Id, exposure, static (s, row) => JsonBody.Cacheable(Describer(s).Describe(row)));
        var food = data.FoodContactLimits.FirstOrDefault(l => l.Id == eaten)
            ?? throw NotFound.Refuse("limit", id, data.ExposureLimits.Select(l => l.Id).Concat(data.FoodContactLimits.Select(l => l.Id)), "/v1/limits");
        return snapshot.Prepare("limit/" + food.Id, food, static (s, row) => JsonBody.Cacheable(Describer(s).Describe(row)));
    }

    private static CautionDescriber Describer(Snapshot snapshot) => snapshot.Part(static s => new CautionDescriber(s.Dataset));
}
