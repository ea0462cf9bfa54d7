using System.Text.Json;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Problems;

namespace ConeService.Api.Http.Problems;

/// <summary>Writes problems; they are never cached.</summary>
internal static class ProblemWriter
{
    public const string MediaType = "application/problem+json";

    /// <summary>Writes the findings of one request as one problem.</summary>
    public static Task WriteAsync(HttpContext context, IReadOnlyList<Finding> findings, int? status = null)
    {
        var codes = findings.Select(f => f.Code).Distinct().ToList();
        var kind = ProblemCatalogue.Find(codes.Count == 1 ? codes[0] : "invalid-request")
            ?? throw new InvalidOperationException($"No problem of kind {codes[0]} is in the catalogue.");
        var problem = new Problem($"/problems/{kind.Code}", kind.Title, status ?? kind.Status, Detail(findings), findings);
        var response = context.Response;
        response.StatusCode = problem.Status;
        response.ContentType = MediaType + "; charset=utf-8";
        response.Headers.CacheControl = "no-store";
        var bytes = JsonSerializer.SerializeToUtf8Bytes(problem, ConeJson.Options.GetTypeInfo(typeof(Problem)));
        response.ContentLength = bytes.Length;
        return HttpMethods.IsHead(context.Request.Method) ? Task.CompletedTask : response.Body.WriteAsync(bytes).AsTask();
    }

    /// <summary>The findings as sentences: what is wrong, what is allowed, the likely mistake.</summary>
    public static string Detail(IEnumerable<Finding> findings) => string.Join(" ", findings.Select(f =>
        f.Message
        + (f.Allowed.Count > 0 ? $" Allowed: {string.Join(", ", f.Allowed)}." : "")
        + (f.LikelyMistake is { } mistake ? " " + mistake : "")));
}
