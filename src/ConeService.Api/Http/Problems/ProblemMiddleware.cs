using ConeService.Contract.Answers;
using Microsoft.AspNetCore.Http.Features;

namespace ConeService.Api.Http.Problems;

/// <summary>The one place where anything that goes wrong becomes a problem document.</summary>
/// <param name="next">The rest of the pipeline.</param>
/// <param name="logs">Makes the request log.</param>
/// <param name="accepted">Tells what an address reads.</param>
internal sealed class ProblemMiddleware(RequestDelegate next, ILoggerFactory logs, AcceptedTypes accepted)
{
    private readonly ILogger log = logs.CreateLogger("ConeService.Requests");

    public async Task InvokeAsync(HttpContext context)
    {
        try
        {
            await next(context);
            if (context.Response.StatusCode >= 400 && !context.Response.HasStarted && context.Response.ContentType is null)
            {
                await ProblemWriter.WriteAsync(context, [Unrouted(context)]);
            }
        }
        catch (RefusedException refused) when (!context.Response.HasStarted)
        {
            await ProblemWriter.WriteAsync(context, refused.Findings);
        }
        catch (BadHttpRequestException bad) when (!context.Response.HasStarted)
        {
            await ProblemWriter.WriteAsync(context, [BadRequest(bad, context)]);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The caller left; there is nobody to answer.
        }
        catch (Exception failure) when (!context.Response.HasStarted)
        {
            log.LogError(failure, "{Method} {Path} failed, trace {Trace}", context.Request.Method, context.Request.Path, context.TraceIdentifier);
            await ProblemWriter.WriteAsync(context, [new("internal-error", "", null, $"The service failed; trace {context.TraceIdentifier}.", [])]);
        }

        if (log.IsEnabled(LogLevel.Information))
        {
            log.LogInformation("{Method} {Path}{Query} answered {Status}", context.Request.Method, context.Request.Path, context.Request.QueryString, context.Response.StatusCode);
        }
    }

    private Finding Unrouted(HttpContext context)
    {
        var path = context.Request.Path.ToString();
        return context.Response.StatusCode switch
        {
            StatusCodes.Status405MethodNotAllowed => new(
                "method-not-allowed", "method", context.Request.Method, $"{path} is not there for {context.Request.Method}.", [.. context.Response.Headers.Allow.OfType<string>()]),
            StatusCodes.Status415UnsupportedMediaType => new(
                "content-type-unsupported", "Content-Type", context.Request.ContentType, $"{path} does not read {context.Request.ContentType ?? "a body without a content type"}.", [.. accepted.At(context.Request.Path)],
                "curl sends form data unless told: -H 'Content-Type: application/json'."),
            _ => new("not-found", "path", path, $"There is nothing at {path}.", ["/openapi/v1.json lists every address"]),
        };
    }

    // The framework's own messages name C# types: only the status is taken from them.
    private static Finding BadRequest(BadHttpRequestException bad, HttpContext context) => bad.StatusCode == StatusCodes.Status413PayloadTooLarge
        ? new("request-too-large", "", null, "The body is too large.", [$"up to {context.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize ?? ServiceSetup.LargestBody:N0} bytes"])
        : new("malformed-json", "", null, "The request can't be read.", ["the form in /openapi/v1.json"]);
}
