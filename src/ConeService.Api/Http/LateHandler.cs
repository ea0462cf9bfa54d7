namespace ConeService.Api.Http;

/// <summary>
/// Routes whose handlers are made when they are first asked. The framework makes code for the handler of every route before the first
/// answer; of some 130 routes a start needs two or three, and the code of the others took most of it.
/// </summary>
internal static class LateHandler
{
    /// <summary>Maps a route; all that its description tells is known at once.</summary>
    public static RouteHandlerBuilder Map(IEndpointRouteBuilder routes, string pattern, IEnumerable<string> methods, Delegate handler) =>
        RouteHandlerServices.Map(routes, pattern, handler, methods, RequestDelegateFactory.InferMetadata, Later);

    private static RequestDelegateResult Later(
        Delegate handler, RequestDelegateFactoryOptions options, RequestDelegateMetadataResult? metadata)
    {
        var made = new Lazy<RequestDelegate>(() => RequestDelegateFactory.Create(handler, options, metadata).RequestDelegate);
        return new(context => made.Value(context), [.. options.EndpointBuilder!.Metadata]);
    }
}
