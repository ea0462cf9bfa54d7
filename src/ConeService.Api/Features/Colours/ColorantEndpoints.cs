using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Colours;

namespace ConeService.Api.Features.Colours;

/// <summary>The colorants and the vocabularies of colour.</summary>
internal static class ColorantEndpoints
{
    public static void MapColorants(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/colorants", List).WithQuery()
            .Describe("listColorants", Tags.Colour).Answers<ColorantList>(Csv.MediaType).Problems(406);
        routes.MapRead("/colorants/{id}", One).WithQuery()
            .Describe("getColorant", Tags.Colour).Answers<ColorantDetail>().Problems(400, 404);
    }

    /// <summary>The colorants.</summary>
    /// <remarks>
    /// With the forms in which they are weighed, the base glazes, additives, atmospheres and colour words to ask for colours in,
    /// and every colour rule.
    /// </remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "colorants", static r => r.Colours.Colorants());

    /// <summary>One colorant.</summary>
    /// <remarks>
    /// Every colour that is told of it, which atmospheres no source covers, rules, temperature limits, cautions and exposure
    /// limits.
    /// </remarks>
    /// <param name="id">Id of the colorant.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("colorant/" + id, id, static (r, x) => JsonBody.Cacheable(r.Colours.Colorant(x)));
}
