using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Routing.Template;

namespace ConeService.Api.Http.Problems;

/// <summary>
/// Says which media types an address reads. Routing refuses another type before any handler runs, and does not say what would do.
/// </summary>
/// <param name="endpoints">Every endpoint of the host.</param>
internal sealed class AcceptedTypes(EndpointDataSource endpoints)
{
    /// <summary>The media types of the endpoints at a path, for any method.</summary>
    public IReadOnlyList<string> At(PathString path) =>
        [.. endpoints.Endpoints.OfType<RouteEndpoint>()
            .Where(e => e.RoutePattern.RawText is { } pattern
                && new TemplateMatcher(TemplateParser.Parse(pattern.TrimStart('/')), []).TryMatch(path, []))
            .SelectMany(e => e.Metadata.GetMetadata<IAcceptsMetadata>()?.ContentTypes ?? [])
            .Distinct(StringComparer.OrdinalIgnoreCase)];
}
