using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Problems;

namespace ConeService.Api.OpenApi;

/// <summary>Says in the document what an endpoint is called and answers.</summary>
internal static class EndpointDescription
{
    /// <summary>
    /// Names the operation; summary and description come from the handler's XML comments, which the document finds only on
    /// handlers that are not private.
    /// </summary>
    public static RouteHandlerBuilder Describe(this RouteHandlerBuilder builder, string operationId, string tag) =>
        builder.WithName(operationId).WithTags(tag);

    /// <summary>The successful answer.</summary>
    public static RouteHandlerBuilder Answers<T>(this RouteHandlerBuilder builder, params string[] otherMediaTypes) =>
        builder.Produces<T>(StatusCodes.Status200OK, JsonBody.MediaType, otherMediaTypes);

    /// <summary>The problems that may come instead; 400 wherever query parameters are checked.</summary>
    public static RouteHandlerBuilder Problems(this RouteHandlerBuilder builder, params int[] statuses)
    {
        foreach (var status in statuses) builder.Produces<Problem>(status, ProblemWriter.MediaType);
        return builder;
    }
}
