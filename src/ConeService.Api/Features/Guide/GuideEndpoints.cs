using ConeService.Api.Http;

namespace ConeService.Api.Features.Guide;

/// <summary>The documentation as pages: what the equations are, how each is derived and tried.</summary>
internal static class GuideEndpoints
{
    public static void MapGuide(this IEndpointRouteBuilder routes) => routes.MapRead("/guide/{page}", Page).WithQuery()
        .WithName("getGuidePage").WithSummary("A page of the documentation; every equation has an anchor of its own there.")
        .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).ExcludeFromDescription();

    private static PreparedBody Page(string page, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("guide/" + page, page, static (r, p) => GuidePage.Render(p, r.Package.Equations().Items));
}
