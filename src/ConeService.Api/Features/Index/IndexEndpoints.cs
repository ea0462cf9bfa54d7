using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Routes;

namespace ConeService.Api.Features.Index;

/// <summary>Every address of the service, with links.</summary>
internal static class IndexEndpoints
{
    public static void MapIndex(this IEndpointRouteBuilder routes)
    {
        routes.MapRead(Links.Index, List).WithQuery()
            .Describe("listRoutes", Tags.Operation).Answers<RouteList>(HtmlPage.MediaType);
        routes.MapRead(Links.Document, Document).WithQuery()
            .WithName("getDocument").WithSummary("The OpenAPI document.")
            .Produces<string>(StatusCodes.Status200OK, JsonBody.MediaType).ExcludeFromDescription();
    }

    /// <summary>Every address.</summary>
    /// <remarks>Name, address as a URI template, methods and media types of each, with what the OpenAPI document leaves out, such as
    /// the help pages of problems. What has a media type text/csv may be asked for by the suffix .csv too, and so on: .json, .txt,
    /// .svg, .html, .ics.</remarks>
    /// <param name="context">The request.</param>
    /// <param name="endpoints">Every endpoint of the host.</param>
    /// <param name="document">The OpenAPI document.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static async Task<IResult> List(
        HttpContext context, EndpointDataSource endpoints, PublishedDocument document, SnapshotHolder snapshots)
    {
        Links.Describe(context);
        var summaries = await document.Summaries();
        return snapshots.Current.Prepare("routes", (endpoints, summaries), static (r, x) =>
            JsonBody.Cacheable(new RouteList(r.Dataset.VersionId, RouteCatalogue.All(x.endpoints, x.summaries))));
    }

    private static async Task<IResult> Document(HttpContext context, PublishedDocument document)
    {
        Links.Describe(context);
        return await document.Body();
    }
}
