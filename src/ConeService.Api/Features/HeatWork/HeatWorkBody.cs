using System.IO.Pipelines;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Features.HeatWork;

/// <summary>A request body of JSON, or an upload that is still to be read.</summary>
/// <param name="Value">The request; of an upload an empty one whose log comes by <paramref name="Upload"/>.</param>
/// <param name="Upload">The uploaded log; null for JSON.</param>
internal sealed record HeatWorkBody(HeatWorkRequest Value, PipeReader? Upload) : IRequestBody<HeatWorkRequest>
{
    /// <summary>Binds the parameter by the Content-Type header.</summary>
    public static async ValueTask<HeatWorkBody?> BindAsync(HttpContext context)
    {
        var request = context.Request;
        var type = MediaTypeHeaderValue.TryParse(request.ContentType, out var parsed) ? parsed.MediaType.Value : null;
        if (string.Equals(type, Csv.MediaType, StringComparison.OrdinalIgnoreCase)) return new(new() { Units = "C", Log = [] }, request.BodyReader);
        if (!string.Equals(type, JsonBody.MediaType, StringComparison.OrdinalIgnoreCase))
        {
            throw new RefusedException(new Finding(
                "content-type-unsupported", "Content-Type", request.ContentType, "The body must be JSON or CSV, and the Content-Type header must say which.", [JsonBody.MediaType, Csv.MediaType],
                "curl sends form data unless told: -H 'Content-Type: text/csv' --data-binary @log.csv."));
        }

        if (request.Query.Count > 0)
        {
            throw new RefusedException([.. request.Query.Select(q => new Finding(
                "unknown-parameter", q.Key, q.Value.ToString(), "Query parameters here go with a text/csv upload; a JSON body carries its own members.", ["no query parameters with JSON"]))]);
        }

        return new(await JsonBody.ReadAsync<HeatWorkRequest>(request), null);
    }
}

/// <summary>A JSON body of one of the other heat-work addresses.</summary>
internal sealed record SolveBody(SolveRequest Value) : IRequestBody<SolveRequest>
{
    public static async ValueTask<SolveBody?> BindAsync(HttpContext context) => new(await JsonOnly.ReadAsync<SolveRequest>(context.Request));
}

/// <summary>A JSON body of witness cones.</summary>
internal sealed record CompareBody(CompareRequest Value) : IRequestBody<CompareRequest>
{
    public static async ValueTask<CompareBody?> BindAsync(HttpContext context) => new(await JsonOnly.ReadAsync<CompareRequest>(context.Request));
}

/// <summary>Bodies that come as JSON and as nothing else.</summary>
internal static class JsonOnly
{
    public static Task<T> ReadAsync<T>(HttpRequest request) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out var type) && type.MediaType.Equals(JsonBody.MediaType, StringComparison.OrdinalIgnoreCase)
            ? JsonBody.ReadAsync<T>(request)
            : throw new RefusedException(new Finding("content-type-unsupported", "Content-Type", request.ContentType, "The body must be JSON, and the Content-Type header must say so.", [JsonBody.MediaType]));
}
