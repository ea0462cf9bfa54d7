using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Answers;

namespace ConeService.Api.Features.Problems;

/// <summary>The help pages that the type of a problem points to.</summary>
internal static class ProblemPages
{
    public static void MapProblemPages(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/problems", Index).WithQuery().ExcludeFromDescription();
        routes.MapRead("/problems/{code}", One).WithQuery().ExcludeFromDescription();
    }

    private static IResult Index(SnapshotHolder snapshots) => snapshots.Current.Prepare("problems", 0, static (_, _) => HtmlPage.Render("Problems", $"""
        <h1>Problems</h1>
        <p>Every error of the service is a problem document (RFC 9457). Its <code>type</code> is one of these:</p>
        <ul>
        {string.Join("\n", ProblemCatalogue.All.Select(k => $"<li><a href=\"/problems/{k.Code}\"><code>{k.Code}</code></a> {HtmlPage.Encode(k.Title)} ({k.Status})</li>"))}
        </ul>
        """));

    private static IResult One(string code, SnapshotHolder snapshots)
    {
        var kind = ProblemCatalogue.Find(code) ?? throw Unknown(code);
        return snapshots.Current.Prepare("problem/" + code, kind, static (_, k) => HtmlPage.Render(k.Title, $"""
            <h1>{HtmlPage.Encode(k.Title)}</h1>
            <p class="small"><code>/problems/{k.Code}</code>, HTTP {k.Status}</p>
            <h2>What it means</h2>
            <p>{HtmlPage.Encode(k.Meaning)}</p>
            <h2>What to do</h2>
            <p>{HtmlPage.Encode(k.Remedy)}</p>
            <p><a href="/problems">All problems</a> · <a href="/docs">All addresses</a></p>
            """));
    }

    private static RefusedException Unknown(string code)
    {
        var near = NearMatches.Find(code, ProblemCatalogue.All.Select(k => k.Code));
        return new(new Finding("not-found", "code", code, $"There is no problem “{code}”.", [.. near], near.Count > 0 ? $"Probably {near[0]}." : null));
    }
}
