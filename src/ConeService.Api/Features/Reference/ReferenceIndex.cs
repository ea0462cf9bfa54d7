using System.Globalization;
using System.Text;
using System.Text.Json;
using ConeService.Api.Http;
using ConeService.Contract.Answers;

namespace ConeService.Api.Features.Reference;

/// <summary>Every operation by group.</summary>
internal static class ReferenceIndex
{
    private const string Style = """

        .ops{list-style:none;padding:0}.ops li{margin:.35rem 0}.ops a{display:inline-block;min-height:1.5rem}
        .ops code{display:block;font-size:.85rem}h2{margin-bottom:.2rem}:focus-visible{outline:3px solid var(--accent);outline-offset:2px}
        """;

    public static PreparedBody Render(JsonElement root)
    {
        const string Title = "Reference";
        var page = new StringBuilder("<main><h1>Reference</h1>")
            .Append(CultureInfo.InvariantCulture,
            $"<p>{HtmlPage.Encode(root.GetProperty("info").GetProperty("description").GetString())}</p>")
            .Append("<p>No key is needed, and nothing that is sent is stored. Where GET answers, HEAD does too. The same in a form for ")
            .Append("programs: ").Append(Link(Links.Document, "OpenAPI document")).Append("; to try the addresses out in the browser: ")
            .Append(Link(Links.Documentation, "Swagger UI")).Append(", which needs scripts.</p>");
        var operations = ReferenceEndpoints.Operations(root).ToLookup(o => o.Told.GetProperty("tags")[0].GetString());
        foreach (var tag in root.GetProperty("tags").EnumerateArray())
        {
            var name = tag.GetProperty("name").GetString();
            if (!operations.Contains(name)) continue;
            page.Append(CultureInfo.InvariantCulture, $"<h2>{HtmlPage.Encode(name)}</h2>")
                .Append("<p>").Append(HtmlPage.Encode(tag.GetProperty("description").GetString())).Append("</p><ul class=\"ops\">");
            foreach (var operation in operations[name])
            {
                page.Append("<li>").Append(Link($"{Links.Reference}/{operation.Id}", operation.Summary))
                    .Append(CultureInfo.InvariantCulture, $" <code>{operation.Method} {HtmlPage.Encode(operation.Path)}</code></li>");
            }

            page.Append("</ul>");
        }

        return HtmlPage.Render(Title, page.Append("</main>").ToString(), Style);
    }

    /// <summary>A link within the service.</summary>
    public static string Link(string path, string text) => $"<a href=\"{HtmlPage.Encode(new Address(path))}\">{HtmlPage.Encode(text)}</a>";
}
