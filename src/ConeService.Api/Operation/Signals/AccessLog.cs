using System.Diagnostics;
using ConeService.Api.Http.Problems;
using Microsoft.AspNetCore.Http.Features;

namespace ConeService.Api.Operation.Signals;

/// <summary>
/// One line a request: how long, which route, which status, which problem, how many bytes. No body, no query and no address of a caller:
/// what they send is theirs.
/// </summary>
/// <param name="next">The rest of the pipeline.</param>
/// <param name="logs">Makes the log.</param>
internal sealed partial class AccessLog(RequestDelegate next, ILoggerFactory logs)
{
    /// <summary>Category of the lines.</summary>
    public const string Category = "ConeService.Access";

    private readonly ILogger log = logs.CreateLogger(Category);

    public Task InvokeAsync(HttpContext context) => log.IsEnabled(LogLevel.Information) ? Logged(context) : next(context);

    private async Task Logged(HttpContext context)
    {
        var started = Stopwatch.GetTimestamp();
        // Only what is compressed on the way out has a length that no header tells.
        var counted = context.Request.Headers.AcceptEncoding.Count > 0 ? CountedBody.Put(context) : null;
        var failed = true;
        try
        {
            await next(context);
            failed = false;
        }
        finally
        {
            var status = failed && !context.Response.HasStarted ? StatusCodes.Status500InternalServerError : context.Response.StatusCode;
            Line(
                log, context.Request.Method, Template(context), status, Stopwatch.GetElapsedTime(started).TotalMilliseconds,
                context.Features.Get<ToldProblem>()?.Code, counted?.Bytes ?? Bytes(context),
                Trace.Id(context));
        }
    }

    // The template and not the path: a path holds what a caller sent.
    private static string Template(HttpContext context) =>
        (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText
        ?? (context.Features.Get<IEndpointFeature>()?.Endpoint?.DisplayName is { } name ? name : "(none)");

    private static long Bytes(HttpContext context) =>
        HttpMethods.IsHead(context.Request.Method) || context.Response.StatusCode == StatusCodes.Status304NotModified
            ? 0
            : context.Response.ContentLength ?? 0;

    [LoggerMessage(
        EventId = 1, Level = LogLevel.Information,
        Message = "{Method} {Route} {Status} in {Milliseconds:0.000} ms, problem {Problem}, {Bytes} bytes, trace {TraceId}")]
    private static partial void Line(
        ILogger logger, string method, string route, int status, double milliseconds, string? problem, long bytes, string traceId);
}
