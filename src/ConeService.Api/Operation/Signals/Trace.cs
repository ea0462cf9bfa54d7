using System.Diagnostics;

namespace ConeService.Api.Operation.Signals;

/// <summary>What a request is called in the log, in problems and in traces.</summary>
internal static class Trace
{
    /// <summary>Id of its trace, from <c>traceparent</c> where the caller sent one; the server's own number where nothing traces.</summary>
    public static string Id(HttpContext context) => Activity.Current?.TraceId.ToString() ?? context.TraceIdentifier;
}
