using System.Reflection;
using ConeService.Api.Http;

namespace ConeService.Api.Features.Embedding;

/// <summary>The optional script of course pages, which makes a card live where scripts are allowed, and the style that we put over
/// Swagger UI.</summary>
internal static class EmbeddingEndpoints
{
    /// <summary>Path of the script.</summary>
    public const string Script = "/embed/cone-service.js";

    /// <summary>Name of the style beside the page of Swagger UI.</summary>
    public const string Style = "looks.css";

    public static void MapEmbedding(this IEndpointRouteBuilder routes)
    {
        Map(routes, Script, "cone-service.js", "text/javascript")
            .WithName("getEmbedScript").WithSummary("The optional script by which a card answers while one types.");
        Map(routes, $"{Links.Documentation}/{Style}", "docs.css", "text/css")
            .WithName("getDocsStyle").WithSummary("The style over Swagger UI: contrast and focus.");
    }

    private static RouteHandlerBuilder Map(IEndpointRouteBuilder routes, string path, string file, string mediaType)
    {
        var body = new Lazy<PreparedBody>(() => PreparedBody.Text(Read("embed/" + file), mediaType).Keep());
        return routes.MapRead(path, (HttpContext _) => body.Value).WithQuery()
            .Produces<string>(StatusCodes.Status200OK, mediaType).ExcludeFromDescription();
    }

    private static string Read(string name)
    {
        using var reader = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
