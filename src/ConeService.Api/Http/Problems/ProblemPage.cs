using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Http.Problems;

/// <summary>A problem as a page, for who followed a link in a browser: what the problem document says, and no less.</summary>
internal static class ProblemPage
{
    /// <summary>The page, UTF-8.</summary>
    public static byte[] Bytes(Problem problem) => Encoding.UTF8.GetBytes(
        HtmlPage.Text(problem.Title.ToString(), $"""
            <h1>{HtmlPage.Encode(problem.Title)}</h1>
            <p class="lead">{HtmlPage.Encode(problem.Detail)}</p>
            <p class="small">HTTP {problem.Status}</p>
            <h2>{HtmlPage.Encode(Message.Of("problems.page.found"))}</h2>
            <ul>
            {string.Join("\n", problem.Errors.Select(Entry))}
            {(problem.MoreErrors > 0 ? $"<li>{HtmlPage.Encode(ProblemWriter.More(problem.MoreErrors))}</li>" : "")}
            </ul>
            <p>{Link(problem.Type, Message.Of("problems.page.kind"))} ·
            {Link(new Address("/problems").ToString(), Message.Of("problems.page.all"))} ·
            {Link(new Address(Links.Index).ToString(), Message.Of("problems.page.index"))}</p>
            """, language: Speech.Current.Language));

    private static string Entry(Finding finding)
    {
        var sentences = Message.Sentences(ProblemWriter.SentencesOf(finding));
        var place = finding.Field.Length > 0 ? $"<code>{HtmlPage.Encode(finding.Field)}</code>: " : "";
        var value = finding.Value is { } sent ? $" <code>{HtmlPage.Encode(sent)}</code>" : "";
        return $"<li>{place}{HtmlPage.Encode(sentences)} <span class=\"small\"><code>{finding.Code}</code>{value}</span></li>";
    }

    private static string Link(string address, Message text) =>
        $"<a href=\"{HtmlPage.Encode(address)}\">{HtmlPage.Encode(text)}</a>";
}
