using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Materials;

namespace ConeService.Api.Features.Materials;

/// <summary>Clay bodies, glazes and decorations.</summary>
internal static class MaterialEndpoints
{
    public static void MapMaterials(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/clay-bodies", Bodies).WithQuery("cone", "atmosphere")
            .Describe("listClayBodies", Tags.Loads).Answers<ClayBodyList>(Csv.MediaType).Problems(400, 406);
        routes.MapRead("/clay-bodies/{id}", Body).WithQuery()
            .Describe("getClayBody", Tags.Loads).Answers<ClayBodyDetail>().Problems(400, 404);
        routes.MapRead("/glazes", Glazes).WithQuery("cone", "atmosphere")
            .Describe("listGlazes", Tags.Loads).Answers<GlazeList>(Csv.MediaType).Problems(400, 406);
        routes.MapRead("/glazes/{id}", Glaze).WithQuery()
            .Describe("getGlaze", Tags.Loads).Answers<GlazeDetail>().Problems(400, 404);
    }

    /// <summary>Clay bodies.</summary>
    /// <remarks>With their cone ranges; a studio's own, from its overlay, follow.</remarks>
    /// <param name="cone">Only bodies that are mature at this cone.</param>
    /// <param name="atmosphere">Only bodies used in this atmosphere: oxidation, neutral or reduction.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Bodies(string? cone, string? atmosphere, HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Filtered(
            request, snapshots.Current, "clay-bodies", [cone, atmosphere],
            static r => r.Materials.Bodies(), r => r.Materials.Bodies(cone, atmosphere));

    /// <summary>One clay body.</summary>
    /// <remarks>Its ranges, what happens below and above them and from which cone, and where sources contradict each other on it.</remarks>
    /// <param name="id">Id of the body.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Body(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("clay-body/" + id, id, static (r, x) => JsonBody.Cacheable(r.Materials.Body(x)));

    /// <summary>Glazes and decorations.</summary>
    /// <remarks>With their cone ranges and atmospheres; a studio's own, from its overlay, follow.</remarks>
    /// <param name="cone">Only coats that suit this cone.</param>
    /// <param name="atmosphere">Only coats that suit this atmosphere: oxidation, neutral or reduction.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Glazes(string? cone, string? atmosphere, HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Filtered(
            request, snapshots.Current, "glazes", [cone, atmosphere],
            static r => r.Materials.Glazes(), r => r.Materials.Glazes(cone, atmosphere));

    /// <summary>One glaze or decoration.</summary>
    /// <remarks>
    /// Its range, atmospheres and order of firing, what happens outside them, and where sources contradict each other on it.
    /// </remarks>
    /// <param name="id">Id of the coat.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Glaze(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("glaze/" + id, id, static (r, x) => JsonBody.Cacheable(r.Materials.Glaze(x)));
}
