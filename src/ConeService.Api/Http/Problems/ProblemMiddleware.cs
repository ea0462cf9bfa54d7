using ConeService.Api.Operation.Signals;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using Microsoft.AspNetCore.Http.Features;

namespace ConeService.Api.Http.Problems;

/// <summary>The one place where anything that goes wrong becomes a problem document.</summary>
/// <param name="next">The rest of the pipeline.</param>
/// <param name="logs">Makes the request log.</param>
/// <param name="accepted">Tells what an address reads.</param>
/// <param name="paths">Finds the address that was meant.</param>
internal sealed class ProblemMiddleware(RequestDelegate next, ILoggerFactory logs, AcceptedTypes accepted, NearPaths paths)
{
    private readonly ILogger log = logs.CreateLogger("ConeService.Requests");

    public async Task InvokeAsync(HttpContext context)
    {
        try
        {
            await next(context);
            if (Mistakes.Any(context) && !context.Response.HasStarted) await ProblemWriter.WriteAsync(context, []);
            else if (context.Response.StatusCode >= 400 && !context.Response.HasStarted && context.Response.ContentType is null)
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
        catch (IOException) when (!context.Response.HasStarted && !context.RequestAborted.IsCancellationRequested)
        {
            // A body whose chunks can't be told apart; nothing else is read or written before an answer is begun.
            await ProblemWriter.WriteAsync(context, [Unreadable]);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The caller left; there is nobody to answer.
        }
        catch (Exception failure) when (!context.Response.HasStarted)
        {
            var request = context.Request;
            log.LogError(failure, "{Method} {Path} failed, trace {TraceId}", request.Method, request.Path, Trace.Id(context));
            await ProblemWriter.WriteAsync(context, [Failed(context)]);
        }
    }

    private Finding Unrouted(HttpContext context)
    {
        var request = context.Request;
        var suffix = context.Features.Get<Suffix>();
        var path = (suffix?.Path ?? request.Path).ToString();
        return context.Response.StatusCode switch
        {
            StatusCodes.Status405MethodNotAllowed => new(
                FindingCodes.MethodNotAllowed, "method", request.Method,
                Message.Of("http.method-not-there", ("path", path), ("method", request.Method)),
                Message.Verbatim(context.Response.Headers.Allow.OfType<string>())),
            StatusCodes.Status415UnsupportedMediaType => new(
                FindingCodes.ContentTypeUnsupported, "Content-Type", request.ContentType,
                request.ContentType is { } type
                    ? Message.Of("http.content-type-not-read", ("path", path), ("type", type))
                    : Message.Of("http.content-type-none-read", ("path", path)),
                Message.Verbatim(accepted.At(request.Path)), Message.Of("http.curl-json")),
            _ => NotFound(path, [.. paths.Find(request.Path.ToString()).Select(p => new Address(p + suffix?.Text).ToString())]),
        };
    }

    private static Finding NotFound(string path, IReadOnlyList<string> near) => new(
        FindingCodes.NotFound, "path", path, Message.Of("http.no-such-path", ("path", path)),
        [.. Message.Verbatim(near), Message.Of("http.every-address")],
        near.Count > 0 ? Message.Of("answers.near-match", ("near", near[0])) : null);

    private static Finding Unreadable =>
        new(FindingCodes.MalformedJson, "", null, Message.Of("http.request-unreadable"), [Message.Of("http.form-in-document")]);

    private static Finding Failed(HttpContext context) =>
        new(FindingCodes.InternalError, "", null, Message.Of("http.service-failed", ("trace", Trace.Id(context))), []);

    // The framework's own messages name C# types: only the status is taken from them.
    private static Finding BadRequest(BadHttpRequestException bad, HttpContext context)
    {
        if (bad.StatusCode == StatusCodes.Status408RequestTimeout)
            return new(FindingCodes.BodyStalled, "", null, Message.Of("http.body-stalled"), [Message.Of("http.try-again-later")]);
        if (bad.StatusCode != StatusCodes.Status413PayloadTooLarge)
            return Unreadable;
        var most = context.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize ?? ServiceSetup.LargestBody;
        return new(
            FindingCodes.RequestTooLarge, "", null, Message.Of("http.body-too-large"), [Message.Of("http.up-to-bytes", ("bytes", most))]);
    }
}
