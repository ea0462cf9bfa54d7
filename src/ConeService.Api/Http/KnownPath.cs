using ConeService.Contract.Texts;

namespace ConeService.Api.Http;

/// <summary>
/// Answers that follow from the path and the data package alone, found by the path: routing, binding and reading a cone's spelling take a
/// seventh of the time of a look-up that is prepared (bench/README.md). Only for requests that ask for nothing but the path; the rest
/// goes the usual way.
/// </summary>
internal static class KnownPath
{
    // Every cone, card and list in its usual spelling several times over. Others are answered as before.
    private const int Most = 2048;
    private const int LongestPath = 64;

    /// <summary>Says of a read address that, without a query and told nothing by headers, it answers by its path alone.</summary>
    public static RouteHandlerBuilder AnswersByPath(this RouteHandlerBuilder builder) => builder.AddEndpointFilter(async (call, next) =>
    {
        var context = call.HttpContext;
        var snapshots = context.RequestServices.GetRequiredService<SnapshotHolder>();
        var before = snapshots.Current;
        var result = await next(call);
        // The same before and after: it is the one that the answer was made of.
        if (result is PreparedBody { IsKept: true } body && IsPlain(context.Request, body) && snapshots.Current == before)
            Remember(before, context, body);
        return result;
    });

    /// <summary>Before routing: hands out what was handed out for the same path before.</summary>
    public static RequestDelegate Middleware(RequestDelegate next, SnapshotHolder snapshots) => context =>
    {
        if (!snapshots.Current.Paths.TryGetValue(context.Request.Path.Value ?? "", out var known) || !IsPlain(context.Request, known.Body))
            return next(context);
        // Logs and metrics name the route.
        context.SetEndpoint(known.Endpoint);
        return known.Body.ExecuteAsync(context);
    };

    private static void Remember(Snapshot snapshot, HttpContext context, PreparedBody body)
    {
        var path = context.Request.Path.Value!;
        if (path.Length > LongestPath || snapshot.Paths.Count >= Most || context.GetEndpoint() is not { } endpoint) return;
        snapshot.Paths.TryAdd(path, (endpoint, body));
    }

    private static bool IsPlain(HttpRequest request, PreparedBody body)
    {
        if (request.QueryString.HasValue || !(HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method))) return false;
        var accept = request.Headers.Accept;
        if (accept.Count > 1 || (accept.Count == 1 && accept[0] != "*/*")) return false;
        if (body.Varies is { } header && request.Headers.ContainsKey(header)) return false;
        var speech = Speech.Current;
        return speech.Language == MessageBook.English && speech.Root.Length == 0;
    }
}
