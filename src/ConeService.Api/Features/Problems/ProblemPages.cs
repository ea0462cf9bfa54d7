using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.Problems;

/// <summary>The help pages that the type of a problem points to, in the language of the reader.</summary>
internal static class ProblemPages
{
    private static Message Heading => Message.Of("problems.page.heading");

    public static void MapProblemPages(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/problems", Index).WithQuery().WithName("listProblems").WithSummary("What can go wrong.")
            .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).ExcludeFromDescription();
        routes.MapRead("/problems/{code}", One).WithQuery().WithName("getProblem").WithSummary("One kind of problem.")
            .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).ExcludeFromDescription();
    }

    private static IResult Index(SnapshotHolder snapshots) => snapshots.Current.Prepare("problems", static _ => Page(Heading, $"""
        <h1>{HtmlPage.Encode(Heading)}</h1>
        <p>{HtmlPage.Encode(Message.Of("problems.page.intro", ("type", "type")))}</p>
        <ul>
        {string.Join("\n", ProblemKinds.All.Select(Entry))}
        </ul>
        """));

    private static string Entry(ProblemKind kind) =>
        $"<li><a href=\"{HtmlPage.Encode(new Address("/problems/" + kind.Code))}\"><code>{kind.Code}</code></a> "
        + $"{HtmlPage.Encode(kind.Title)} ({kind.Status})</li>";

    private static IResult One(string code, SnapshotHolder snapshots)
    {
        var kind = ProblemKinds.Find(code) ?? throw Unknown(code);
        return snapshots.Current.Prepare("problem/" + code, kind, static (_, k) => Page(k.Title, $"""
            <h1>{HtmlPage.Encode(k.Title)}</h1>
            <p class="small"><code>/problems/{k.Code}</code>, HTTP {k.Status}</p>
            <h2>{HtmlPage.Encode(Message.Of("problems.page.meaning"))}</h2>
            <p>{HtmlPage.Encode(k.Meaning)}</p>
            <h2>{HtmlPage.Encode(Message.Of("problems.page.remedy"))}</h2>
            <p>{HtmlPage.Encode(k.Remedy)}</p>
            <p>{Link("/problems", Message.Of("problems.page.all"))} ·
            {Link(Links.Documentation, Message.Of("problems.page.addresses"))}</p>
            """));
    }

    private static string Link(string path, Message text) =>
        $"<a href=\"{HtmlPage.Encode(new Address(path))}\">{HtmlPage.Encode(text)}</a>";

    private static PreparedBody Page(Message title, string body) =>
        HtmlPage.Render(title.ToString(), body, language: Speech.Current.Language);

    private static RefusedException Unknown(string code)
    {
        var near = NearMatches.Find(code, ProblemKinds.All.Select(k => k.Code));
        return new(new Finding(
            FindingCodes.NotFound, "code", code, Message.Of("problems.no-such-problem", ("code", code)), Message.Verbatim(near),
            near.Count > 0 ? Message.Of("answers.near-match", ("near", near[0])) : null));
    }
}
