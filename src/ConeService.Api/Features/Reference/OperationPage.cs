using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ConeService.Api.Http;
using Markdig;

namespace ConeService.Api.Features.Reference;

/// <summary>One operation: what it takes and what it answers, with examples to copy.</summary>
internal static class OperationPage
{
    // Stands in place of width and depth, which the examples have; all three are refused.
    private const string RoundChamber = "interiorDiameterMillimetres";

    private const string Style = """

        pre{white-space:pre-wrap;overflow-wrap:anywhere;overflow-x:visible;font-size:.85rem;margin:.4rem 0 1rem}
        h2{border-bottom:2px solid var(--accent);padding-bottom:.1rem}h3{margin:1.2rem 0 .2rem}
        table{font-size:.92rem}tbody th{font-weight:600;overflow-wrap:anywhere}td{overflow-wrap:break-word}tr{break-inside:avoid}
        .call{font-size:1.05rem;font-weight:600}:focus-visible{outline:3px solid var(--accent);outline-offset:2px}
        :target{outline:2px solid var(--accent);outline-offset:4px}@media print{pre{break-inside:avoid;border-color:#999}}
        """;

    // Examples read as they are sent: apostrophes and degree signs stay what they are; the page encodes them.
    private static readonly JsonSerializerOptions Indented =
        new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().Build();

    /// <summary>The page.</summary>
    /// <param name="root">The document.</param>
    /// <param name="operation">The operation.</param>
    /// <param name="service">The absolute address of the service, for the examples.</param>
    public static PreparedBody Render(JsonElement root, Operation operation, string service)
    {
        var (words, told) = (new SchemaWords(root), operation.Told);
        var page = new StringBuilder("<main>").Append(CultureInfo.InvariantCulture, $"<h1>{HtmlPage.Encode(operation.Summary)}</h1>")
            .Append(CultureInfo.InvariantCulture,
            $"<p class=\"call\"><code>{operation.Method} {HtmlPage.Encode(operation.Path)}</code></p>");
        if (told.TryGetProperty("description", out var text)) page.Append(Prose(text.GetString()!));
        Examples(page, operation, service);
        Parameters(page, told, words);
        if (told.TryGetProperty("requestBody", out var body)) Body(page, body, words);
        Answers(page, told, words);
        Parts(page, words);
        page.Append("<p class=\"small\">").Append(ReferenceIndex.Link(Links.Reference, "All operations")).Append(" · ")
            .Append(ReferenceIndex.Link("/problems", "All problems")).Append("</p></main>");
        return HtmlPage.Render(operation.Summary, page.ToString(), Style + HtmlPage.Stacked);
    }

    // Texts of the document are Markdown in which references to characters may stand.
    private static string Prose(string text) => Markdown.ToHtml(WebUtility.HtmlDecode(text), Pipeline);

    private static void Examples(StringBuilder page, Operation operation, string service)
    {
        page.Append("<h2>Ask</h2>");
        if (!operation.Told.TryGetProperty("requestBody", out var body))
        {
            var address = service + Asked(operation, withQuery: true);
            Copy(page, $"curl '{address}'");
            page.Append(CultureInfo.InvariantCulture, $"<p><a href=\"{HtmlPage.Encode(address)}\">See the answer</a></p>");
            return;
        }

        foreach (var content in body.GetProperty("content").EnumerateObject())
        {
            var address = service + Asked(operation, withQuery: content.Name != JsonBody.MediaType);
            foreach (var (summary, value) in Values(content.Value))
            {
                page.Append(CultureInfo.InvariantCulture, $"<p>{HtmlPage.Encode($"{content.Name}: {summary}")}</p>");
                // An apostrophe ends what stands between apostrophes: it is put in by itself.
                var sent = value.Replace("'", "'\\''", StringComparison.Ordinal);
                Copy(page, $"curl '{address}' -H 'Content-Type: {content.Name}' --data-binary '{sent}'");
            }
        }
    }

    private static IEnumerable<(string Summary, string Value)> Values(JsonElement content)
    {
        if (content.TryGetProperty("examples", out var all))
        {
            return all.EnumerateObject().Select(e => (
                e.Value.TryGetProperty("summary", out var summary) ? summary.GetString()! : e.Name, Text(e.Value.GetProperty("value"))));
        }

        return content.TryGetProperty("example", out var one) ? [("an example.", Text(one))] : [];
    }

    private static string Text(JsonElement value) =>
        value.ValueKind == JsonValueKind.String ? value.GetString()! : JsonSerializer.Serialize(value, Indented);

    private static void Copy(StringBuilder page, string text) =>
        page.Append("<pre><code>").Append(HtmlPage.Encode(text)).Append("</code></pre>");

    // The address with the examples of its parameters. A JSON body says by itself what the query says beside others.
    private static string Asked(Operation operation, bool withQuery)
    {
        var (path, query) = (operation.Path, new List<string>());
        if (!operation.Told.TryGetProperty("parameters", out var parameters)) return path;
        foreach (var parameter in parameters.EnumerateArray().Where(p => p.TryGetProperty("example", out _)))
        {
            var name = parameter.GetProperty("name").GetString()!;
            var example = Uri.EscapeDataString(Text(parameter.GetProperty("example")));
            if (parameter.GetProperty("in").GetString() == "path") path = path.Replace($"{{{name}}}", example, StringComparison.Ordinal);
            else if (withQuery && name is not (PinnedDataset.Parameter or RoundChamber)) query.Add($"{name}={example}");
        }

        return query.Count == 0 ? path : $"{path}?{string.Join('&', query)}";
    }

    private static void Parameters(StringBuilder page, JsonElement told, SchemaWords words)
    {
        if (!told.TryGetProperty("parameters", out var parameters)) return;
        page.Append("<h2>Parameters</h2><table class=\"many\"><thead><tr><th scope=\"col\">Name</th><th scope=\"col\">Where</th>")
            .Append("<th scope=\"col\">What it says</th><th scope=\"col\">Example</th></tr></thead><tbody>");
        foreach (var parameter in parameters.EnumerateArray())
        {
            var (name, where) = (parameter.GetProperty("name").GetString(), parameter.GetProperty("in").GetString());
            var must = parameter.TryGetProperty("required", out var required) && required.GetBoolean() ? ", needed" : "";
            var example = parameter.TryGetProperty("example", out var value) ? $"<code>{HtmlPage.Encode(Text(value))}</code>" : "–";
            var type = parameter.TryGetProperty("schema", out var schema) ? words.Type(schema) : "text";
            page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\"><code>{HtmlPage.Encode(name)}</code></th>")
                .Append(CultureInfo.InvariantCulture, $"<td data-h=\"Where\">{where}{must}</td>")
                .Append(CultureInfo.InvariantCulture, $"<td data-h=\"What it says\">{SchemaWords.Told(parameter)} ({type})</td>")
                .Append(CultureInfo.InvariantCulture, $"<td data-h=\"Example\">{example}</td></tr>");
        }

        page.Append("</tbody></table>");
    }

    private static void Body(StringBuilder page, JsonElement body, SchemaWords words)
    {
        page.Append("<h2>Body</h2>");
        if (body.TryGetProperty("description", out var text)) page.Append(Prose(text.GetString()!));
        foreach (var content in body.GetProperty("content").EnumerateObject())
        {
            var type = words.Type(content.Value.GetProperty("schema"));
            page.Append(CultureInfo.InvariantCulture, $"<p><code>{content.Name}</code>: {type}</p>");
        }
    }

    private static void Answers(StringBuilder page, JsonElement told, SchemaWords words)
    {
        page.Append("<h2>Answers</h2><table class=\"many\"><thead><tr><th scope=\"col\">Status</th><th scope=\"col\">What it means</th>")
            .Append("<th scope=\"col\">As</th></tr></thead><tbody>");
        foreach (var answer in told.GetProperty("responses").EnumerateObject().OrderBy(a => a.Name, StringComparer.Ordinal))
        {
            var kinds = answer.Value.TryGetProperty("content", out var content)
                ? content.EnumerateObject().Select(c => $"<code>{c.Name}</code>" + (c.Name.Contains("json", StringComparison.Ordinal)
                    ? ": " + words.Type(c.Value.GetProperty("schema")) : ""))
                : [];
            page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{answer.Name}</th><td data-h=\"What it means\">")
                .Append(HtmlPage.Encode(answer.Value.GetProperty("description").GetString()))
                .Append("</td><td data-h=\"As\">").AppendJoin("<br>", kinds).Append("</td></tr>");
        }

        page.Append("</tbody></table>");
    }

    // Reading one part names others; each is told once.
    private static void Parts(StringBuilder page, SchemaWords words)
    {
        if (words.Met.Count > 0) page.Append("<h2>Members</h2>");
        for (var i = 0; i < words.Met.Count; i++) Part(page, words.Met[i], words);
    }

    private static void Part(StringBuilder page, string name, SchemaWords words)
    {
        var schema = words.Named(name);
        page.Append(CultureInfo.InvariantCulture, $"<h3 id=\"{name}\">{name}</h3>");
        if (SchemaWords.Told(schema) is { Length: > 0 } told) page.Append(CultureInfo.InvariantCulture, $"<p>{told}</p>");
        if (!schema.TryGetProperty("properties", out var members))
        {
            page.Append(CultureInfo.InvariantCulture, $"<p>{words.Type(schema)}</p>");
            return;
        }

        var needed = schema.TryGetProperty("required", out var all) ? all.EnumerateArray().Select(r => r.GetString()).ToHashSet() : [];
        page.Append("<table class=\"many\"><thead><tr><th scope=\"col\">Member</th><th scope=\"col\">Type</th>")
            .Append("<th scope=\"col\">What it says</th></tr></thead><tbody>");
        foreach (var member in members.EnumerateObject())
        {
            var always = needed.Contains(member.Name) ? "" : ", may be left out";
            page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\"><code>{HtmlPage.Encode(member.Name)}</code></th>")
                .Append(CultureInfo.InvariantCulture, $"<td data-h=\"Type\">{words.Type(member.Value)}{always}</td>")
                .Append(CultureInfo.InvariantCulture, $"<td data-h=\"What it says\">{SchemaWords.Told(member.Value)}</td></tr>");
        }

        page.Append("</tbody></table>");
    }
}
