using System.Text;
using ConeService.Api.Features.Cards;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Http.Problems;

/// <summary>A problem as a page, for who followed a link in a browser: what the problem document says, and no less.</summary>
internal static class ProblemPage
{
    /// <summary>The page, UTF-8.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="request">The request: within a frame the page looks as a card does, and its links open pages of their own.</param>
    public static byte[] Bytes(Problem problem, HttpRequest request)
    {
        var isCard = request.Path.StartsWithSegments("/cards", StringComparison.OrdinalIgnoreCase);
        var colours = isCard ? CardStyle.Colours(CardLook.ThemeOf(request)) : HtmlPage.AsTheReader;
        return Encoding.UTF8.GetBytes(Page(problem, isCard, isCard ? CardStyle.Css : "", colours));
    }

    private static string Page(Problem problem, bool isCard, string style, string colours) =>
        HtmlPage.Text(problem.Title.ToString(), $"""
            <main><h1>{HtmlPage.Encode(problem.Title)}</h1>
            <p class="lead">{HtmlPage.Encode(problem.Detail)}</p>
            <p class="small">HTTP {problem.Status}</p>
            <h2>{HtmlPage.Encode(Message.Of("problems.page.found"))}</h2>
            <ul>
            {string.Join("\n", problem.Errors.Select(Entry))}
            {(problem.MoreErrors > 0 ? $"<li>{HtmlPage.Encode(ProblemWriter.More(problem.MoreErrors))}</li>" : "")}
            </ul>
            <p>{Link(problem.Type, Message.Of("problems.page.kind"), isCard)} ·
            {Link(new Address("/problems").ToString(), Message.Of("problems.page.all"), isCard)} ·
            {Link(new Address(Links.Index).ToString(), Message.Of("problems.page.index"), isCard)}</p></main>
            """, style, Speech.Current.Language, colours: colours);

    private static string Entry(Finding finding)
    {
        var sentences = Message.Sentences(ProblemWriter.SentencesOf(finding));
        var place = finding.Field.Length > 0 ? $"<code>{HtmlPage.Encode(finding.Field)}</code>: " : "";
        var value = finding.Value is { } sent ? $" <code>{HtmlPage.Encode(sent)}</code>" : "";
        return $"<li>{place}{HtmlPage.Encode(sentences)} <span class=\"small\"><code>{finding.Code}</code>{value}</span></li>";
    }

    private static string Link(string address, Message text, bool outside) =>
        $"<a href=\"{HtmlPage.Encode(address)}\"{(outside ? " target=\"_blank\" rel=\"noopener\"" : "")}>{HtmlPage.Encode(text)}</a>";
}
