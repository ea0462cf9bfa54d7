using ConeService.Api.Http;
using ConeService.Contract.Routes;
using Microsoft.AspNetCore.Http.Metadata;

namespace ConeService.Api.Features.Index;

/// <summary>Lists the addresses that are mapped, so that none can be forgotten.</summary>
internal static class RouteCatalogue
{
    /// <summary>Every endpoint that has a name, in the order in which they are mapped.</summary>
    /// <param name="endpoints">Every endpoint of the host.</param>
    /// <param name="summaries">What operations of the document answer, by name.</param>
    public static IReadOnlyList<RouteSummary> All(EndpointDataSource endpoints, IReadOnlyDictionary<string, string> summaries) =>
        [.. endpoints.Endpoints.OfType<RouteEndpoint>()
            .OrderBy(e => e.Order)
            .Select(e => (Endpoint: e, Name: e.Metadata.GetMetadata<IEndpointNameMetadata>()?.EndpointName))
            .Where(x => x.Name is not null)
            .Select(x => new RouteSummary(
                x.Name!,
                (x.Endpoint.Metadata.GetMetadata<IEndpointSummaryMetadata>()?.Summary ?? summaries.GetValueOrDefault(x.Name!) ?? x.Name!)
                    .TrimEnd('.'),
                new(Template(x.Endpoint)),
                x.Endpoint.Metadata.GetMetadata<IHttpMethodMetadata>()?.HttpMethods ?? [],
                Formats.Of(x.Endpoint)))];

    // Level 3 of RFC 6570: {name} in the path, {?name,name} for the query.
    private static string Template(RouteEndpoint endpoint)
    {
        var path = "/" + endpoint.RoutePattern.RawText?.Trim('/');
        return QueryGuard.Known(endpoint) is { Count: > 0 } query ? $"{path}{{?{string.Join(',', query)}}}" : path;
    }
}
