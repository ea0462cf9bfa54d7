using System.Globalization;
using System.Text;
using System.Text.Json;
using ConeService.Contract.Answers;
using ConeService.Contract.Texts;

namespace ConeService.Api.Http;

/// <summary>Shows any JSON answer as a plain page: what is single in one table, each list in a table of its own.</summary>
internal static class AnswerPage
{
    private const int DeepestHeading = 4;

    /// <summary>The page of an answer.</summary>
    /// <param name="json">The answer.</param>
    /// <param name="context">The request, for the address that was asked.</param>
    public static PreparedBody Render(byte[] json, HttpContext context)
    {
        using var document = JsonDocument.Parse(json);
        var root = document.RootElement;
        var pattern = (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText ?? "";
        var title = Title(root, pattern);
        var page = new StringBuilder().AppendLine(CultureInfo.InvariantCulture, $"<h1>{HtmlPage.Encode(title)}</h1>");
        Members(page, root, 2, DetailsOf(pattern, context) ? new Address(pattern + "/").ToString() : null);
        page.Append("<p class=\"small\">The same as JSON for programs: without the suffix, or with <code>Accept: application/json</code>. ")
            .AppendLine(CultureInfo.InvariantCulture, $"<a href=\"{HtmlPage.Encode(new Address(Links.Index))}\">Every address</a></p>");
        // All of it lies on its side where one table must: a page of its own for each would leave the sheets before it empty.
        var style = page.ToString().Contains("class=\"wide dense\"", StringComparison.Ordinal)
            ? HtmlPage.Printed + HtmlPage.OnItsSide : HtmlPage.Printed;
        return HtmlPage.Render(title, page.ToString(), style, language: Speech.Current.Language);
    }

    private static string Title(JsonElement root, string pattern)
    {
        foreach (var name in (string[])["name", "title", "id"])
        {
            if (root.TryGetProperty(name, out var text) && text.ValueKind == JsonValueKind.String)
                return text.GetString()!;
        }

        if (root.TryGetProperty("cone", out var cone) && cone.ValueKind == JsonValueKind.String) return "Cone " + cone;
        return pattern.Split('/').LastOrDefault(s => s.Length > 0 && s[0] != '{') is { } word and not "v1" ? Words(word) : "ConeService";
    }

    // Whether what a list holds has an address below it.
    private static bool DetailsOf(string pattern, HttpContext context) => !pattern.Contains('{', StringComparison.Ordinal)
        && context.RequestServices.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().Any(
            e => e.RoutePattern.RawText is { } below && below.StartsWith(pattern + "/{", StringComparison.Ordinal)
                && below.EndsWith('}') && below.LastIndexOf('/') == pattern.Length);

    private static void Members(StringBuilder page, JsonElement value, int level, string? details)
    {
        var members = value.EnumerateObject().ToList();
        var single = members.Where(m => !IsTable(m.Value) && m.Value.ValueKind != JsonValueKind.Object).ToList();
        if (single.Count > 0)
        {
            page.Append(HtmlPage.Wide("Single values")).AppendLine("<table><tbody>");
            foreach (var member in single)
            {
                page.AppendLine(CultureInfo.InvariantCulture,
                    $"<tr><th scope=\"row\">{HtmlPage.Encode(Words(member.Name))}</th><td>{Cell(member.Name, member.Value)}</td></tr>");
            }

            page.AppendLine("</tbody></table></div>");
        }

        var heading = Math.Min(level, DeepestHeading);
        foreach (var member in members.Except(single))
        {
            if (member.Value.ValueKind == JsonValueKind.Object)
            {
                page.AppendLine(CultureInfo.InvariantCulture, $"<h{heading}>{HtmlPage.Encode(Words(member.Name))}</h{heading}>");
                Members(page, member.Value, level + 1, null);
            }
            else
            {
                Table(page, member, details);
            }
        }
    }

    private static void Table(StringBuilder page, JsonProperty list, string? details)
    {
        var columns = list.Value.EnumerateArray().SelectMany(r => r.EnumerateObject().Select(m => m.Name)).Distinct().ToList();
        page.AppendLine(CultureInfo.InvariantCulture,
            $"{HtmlPage.Wide(Words(list.Name), columns.Count)}<table><caption>{HtmlPage.Encode(Words(list.Name))}</caption><thead><tr>");
        foreach (var column in columns)
            page.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{HtmlPage.Encode(Words(column))}</th>");
        page.AppendLine("</tr></thead><tbody>");
        foreach (var row in list.Value.EnumerateArray())
        {
            page.Append("<tr>");
            foreach (var column in columns)
            {
                var cell = row.TryGetProperty(column, out var value) ? Cell(column, value) : "";
                if (column == "id" && details is not null && value.ValueKind == JsonValueKind.String && value.GetString() is { } id)
                    cell = $"<a href=\"{HtmlPage.Encode(details + Uri.EscapeDataString(id))}\">{cell}</a>";
                var number = value.ValueKind == JsonValueKind.Number ? " class=\"n\"" : "";
                var head = HtmlPage.IsRows(columns.Count) ? $" data-h=\"{HtmlPage.Encode(Words(column))}\"" : "";
                page.Append(CultureInfo.InvariantCulture, $"<td{number}{head}>{cell}</td>");
            }

            page.AppendLine("</tr>");
        }

        page.AppendLine("</tbody></table></div>");
    }

    private static bool IsTable(JsonElement value) => value.ValueKind == JsonValueKind.Array && value.GetArrayLength() > 0
        && value.EnumerateArray().All(i => i.ValueKind == JsonValueKind.Object);

    private static string Cell(string name, JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Null or JsonValueKind.Undefined => "–",
        JsonValueKind.True => "yes",
        JsonValueKind.False => "no",
        JsonValueKind.Number => value.GetRawText(),
        JsonValueKind.String => Text(name, value.GetString()!),
        JsonValueKind.Array => string.Join(
            "<br>", value.EnumerateArray().Select(i => Cell(name, i)).DefaultIfEmpty("–")),
        _ => string.Join("; ", value.EnumerateObject().Select(m => $"{HtmlPage.Encode(Words(m.Name))}: {Cell(m.Name, m.Value)}")),
    };

    private static string Text(string name, string text)
    {
        // Without its parameters a template is the address itself (RFC 6570, 3.2.8).
        var address = name is "href" or "explain" or "row" ? Rooted(text.Split("{?")[0])
            : text.StartsWith("https://", StringComparison.Ordinal) ? text
            : "{}";
        var shown = HtmlPage.Encode(text);
        return address.AsSpan().ContainsAny('{', ' ') ? shown : $"<a href=\"{HtmlPage.Encode(address)}\">{shown}</a>";
    }

    // A cell of the package is an address without what stands before those of this service.
    private static string Rooted(string address) =>
        address.StartsWith('/') && !address.StartsWith(Speech.Current.Root + "/", StringComparison.Ordinal)
            ? new Address(address).ToString() : address;

    // “endPoints” and “clay-bodies” as a person writes them.
    private static string Words(string name)
    {
        var words = new StringBuilder(name.Length + 4);
        foreach (var letter in name)
        {
            if (letter == '-') words.Append(' ');
            else if (char.IsAsciiLetterUpper(letter) && words.Length > 0) words.Append(' ').Append(char.ToLowerInvariant(letter));
            else words.Append(words.Length == 0 ? char.ToUpperInvariant(letter) : letter);
        }

        return words.ToString();
    }
}
