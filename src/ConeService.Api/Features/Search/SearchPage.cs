using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Study;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.Search;

/// <summary>What was found, for reading, with a form to ask again.</summary>
internal static class SearchPage
{
    public static PreparedBody Render(SearchAnswer answer)
    {
        var title = "Search: " + answer.Query;
        var body = new StringBuilder()
            .AppendLine(CultureInfo.InvariantCulture, $"<h1>{HtmlPage.Encode(title)}</h1>")
            .Append(CultureInfo.InvariantCulture, $"<form action=\"{HtmlPage.Encode(new Address("/v1/search"))}\" role=\"search\">")
            .Append("<p><label for=\"q\">Words, a cone or a temperature</label><br>")
            .Append("<input id=\"q\" name=\"q\" type=\"search\" required maxlength=\"200\" ")
            .Append(CultureInfo.InvariantCulture, $"value=\"{HtmlPage.Encode(answer.Query)}\"> ")
            .AppendLine("<button>Search</button></p></form>");
        if (answer.Answer is { } told)
            body.AppendLine(CultureInfo.InvariantCulture, $"<p class=\"lead\"><strong>{HtmlPage.Encode(told)}</strong></p>");
        if (answer.Items.Count == 0 && answer.Answer is null)
        {
            Nothing(body, answer);
        }
        else if (answer.Items.Count > 0)
        {
            body.AppendLine("<ul>");
            foreach (var hit in answer.Items)
            {
                body.AppendLine(CultureInfo.InvariantCulture,
                    $"<li><a href=\"{HtmlPage.Encode(hit.Href)}\">{HtmlPage.Encode(hit.Name)}</a> "
                    + $"<span class=\"small\">{Words(hit.List)}</span><br>{HtmlPage.Encode(hit.Text)}</li>");
            }

            body.AppendLine("</ul>");
            if (answer.HasMore) body.AppendLine("<p class=\"small\">There is more; another word beside these narrows it down.</p>");
        }

        body.AppendLine(CultureInfo.InvariantCulture, $"<p class=\"small\">Data package {HtmlPage.Encode(answer.DatasetVersion)}.</p>");
        return HtmlPage.Render(title, body.ToString(), Speech.Current.Language);
    }

    private static void Nothing(StringBuilder body, SearchAnswer answer)
    {
        body.AppendLine("<p>Nothing here is about that.</p>");
        if (answer.Probably.Count == 0) return;
        body.Append("<p>Did you mean ").AppendJoin(", ", answer.Probably.Select(p =>
            $"<a href=\"{HtmlPage.Encode(new Address("/v1/search?q=" + Uri.EscapeDataString(p)))}\">{HtmlPage.Encode(p)}</a>"))
            .AppendLine("?</p>");
    }

    private static string Words(string list) => HtmlPage.Encode(list.Replace('-', ' '));
}
