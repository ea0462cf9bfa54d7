using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Study;

namespace ConeService.Api.Features.Questions;

/// <summary>Questions as a sheet to print, with the key on a page of its own.</summary>
internal static class QuestionSheet
{
    private const string Style = """
        ol.choices{list-style:upper-alpha}li{break-inside:avoid}.questions>li{margin-bottom:1rem}
        @media print{.key{break-before:page}}
        """;

    public static string Render(QuestionList questions)
    {
        const string Title = "Questions on firing";
        var body = new StringBuilder($"<h1>{Title}</h1>\n<p>Name:</p>\n<ol class=\"questions\">\n");
        foreach (var q in questions.Items)
        {
            body.Append(CultureInfo.InvariantCulture, $"<li>{HtmlPage.Encode(q.Name)}<ol class=\"choices\">")
                .AppendJoin("", q.Choices.Select(c => $"<li>{HtmlPage.Encode(c.Text)}</li>")).AppendLine("</ol></li>");
        }

        body.AppendLine("</ol>\n<section class=\"key\"><h2>Key</h2>\n<ol>");
        foreach (var q in questions.Items)
        {
            body.Append(CultureInfo.InvariantCulture, $"<li><strong>{q.Right}</strong>. {HtmlPage.Encode(q.Why)} ")
                .AppendJoin(", ", q.Sources.Select(
                    s => $"<a href=\"{HtmlPage.Encode(new Address("/v1/sources/" + s))}\">{HtmlPage.Encode(s)}</a>"))
                .AppendLine("</li>");
        }

        body.AppendLine("</ol></section>").AppendLine(CultureInfo.InvariantCulture,
            $"<p class=\"small\">Data package {HtmlPage.Encode(questions.DatasetVersion)}, seed {questions.Seed}.</p>");
        return HtmlPage.Text(Title, body.ToString(), Style);
    }
}
