using ConeService.Api.Http.Reach;
using ConeService.Api.Operation.Signals;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Http.Problems;

/// <summary>Writes problems; they are never cached.</summary>
internal static class ProblemWriter
{
    public const string MediaType = "application/problem+json";

    /// <summary>Writes the findings of one request as one problem, with the mistakes that were found on its way.</summary>
    /// <param name="context">The request.</param>
    /// <param name="last">What ended it; none where it was answered in spite of its mistakes.</param>
    public static Task WriteAsync(HttpContext context, IReadOnlyList<Finding> last)
    {
        var (findings, more) = Mistakes.Of(context)?.With(context, last) ?? (last, 0);
        var codes = findings.Select(f => f.Code).Distinct().ToList();
        var kind = ProblemKinds.Find(codes.Count == 1 ? codes[0] : FindingCodes.InvalidRequest)
            ?? throw new InvalidOperationException($"“{codes[0]}” is none of FindingCodes.");
        // A relative type would be resolved against whatever was asked for (RFC 9457, 3.1.1).
        var type = $"{context.RequestServices.GetRequiredService<ServiceAddress>().Root(context.Request)}/problems/{kind.Code}";
        var problem = new Problem(
            type, kind.Title, kind.Status, Sentences(findings, more), [.. findings.Take(Told.MostFindings)], Trace.Id(context),
            more + Math.Max(0, findings.Count - Told.MostFindings));
        context.Features.Set(new ToldProblem(kind.Code));
        var asPage = Negotiation.PrefersPage(context.Request);
        var bytes = asPage ? ProblemPage.Bytes(problem, context.Request) : JsonBody.Bytes(problem);
        var response = context.Response;
        response.StatusCode = kind.Status;
        response.ContentType = (asPage ? HtmlPage.MediaType : MediaType) + "; charset=utf-8";
        response.Headers.Append(HeaderNames.Vary, HeaderNames.Accept);
        Links.Describe(context);
        response.ContentLength = bytes.Length;
        response.Headers.CacheControl = "no-store";
        Language.Describe(response.Headers, Speech.Current);
        return HttpMethods.IsHead(context.Request.Method) ? Task.CompletedTask : response.Body.WriteAsync(bytes).AsTask();
    }

    /// <summary>The findings as text in the language of the reader.</summary>
    /// <param name="findings">The findings that are listed.</param>
    /// <param name="more">How many more there are.</param>
    public static string Detail(IReadOnlyList<Finding> findings, int more = 0) => Sentences(findings, more).ToString();

    // What is wrong, what is allowed, the likely mistake; of many findings a summary.
    private static Message Sentences(IReadOnlyList<Finding> findings, int more = 0)
    {
        more += Math.Max(0, findings.Count - Told.MostSentences);
        var told = findings.Take(Told.MostSentences).SelectMany(SentencesOf);
        return Message.Sentences(more == 0 ? told : told.Append(More(more)));
    }

    /// <summary>“And N more …”.</summary>
    public static Message More(int count) => Message.Of("http.more-findings", ("count", count));

    /// <summary>What is wrong, what is allowed, and the likely mistake, of one finding.</summary>
    public static IEnumerable<Message> SentencesOf(Finding finding)
    {
        yield return finding.Message;
        if (finding.Allowed.Count > 0) yield return Message.Of("http.allowed", ("allowed", finding.Allowed));
        if (finding.LikelyMistake is { } mistake) yield return mistake;
    }
}
