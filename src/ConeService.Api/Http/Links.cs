using ConeService.Contract.Texts;
using Microsoft.Extensions.Primitives;

namespace ConeService.Api.Http;

/// <summary>The Link header (RFC 8288) of every answer, by which a caller who got here by chance finds the rest.</summary>
internal static class Links
{
    /// <summary>Path of the OpenAPI document.</summary>
    public const string Document = "/openapi/v1.json";

    /// <summary>Path of the page that shows the document.</summary>
    public const string Documentation = "/docs";

    /// <summary>Path of our own pages over the document: no script, to read and to print.</summary>
    public const string Reference = "/reference";

    /// <summary>Path of the index.</summary>
    public const string Index = "/v1";

    // Almost every answer: made once.
    private static readonly StringValues AtRoot = From("");

    /// <summary>Names the document (service-desc) and its page (service-doc), as RFC 8631 has them, and the index.</summary>
    public static void Describe(HttpContext context)
    {
        var root = Speech.Current.Root;
        context.Response.Headers.Link = root.Length == 0 ? AtRoot : From(root);
    }

    private static StringValues From(string root) =>
        $"<{root}{Document}>; rel=\"service-desc\", <{root}{Documentation}>; rel=\"service-doc\", <{root}{Index}>; rel=\"index\"";
}
