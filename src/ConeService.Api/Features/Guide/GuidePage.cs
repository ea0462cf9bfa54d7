using System.Globalization;
using System.Reflection;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Equations;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace ConeService.Api.Features.Guide;

/// <summary>A file of docs/ as a page, and after it the equations that are derived there, each under its id.</summary>
internal static class GuidePage
{
    private const string Prefix = "guide/";
    private const string Suffix = ".md";
    private static readonly Assembly Home = typeof(GuidePage).Assembly;

    // Headings get the anchors that the links in the files and in the equations name.
    private static readonly Lazy<MarkdownPipeline> Pipeline = new(() => new MarkdownPipelineBuilder()
        .UsePipeTables().UseAutoIdentifiers(AutoIdentifierOptions.GitHub).DisableHtml().Build());

    /// <summary>Names of the pages.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. Home.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal) && n.EndsWith(Suffix, StringComparison.Ordinal))
            .Select(n => n[Prefix.Length..^Suffix.Length]).Order(StringComparer.Ordinal),
    ];

    /// <summary>The page.</summary>
    /// <param name="name">Its name: that of the file without its ending.</param>
    /// <param name="equations">Every equation.</param>
    /// <exception cref="RefusedException">There is no such page.</exception>
    public static PreparedBody Render(string name, IReadOnlyList<Equation> equations)
    {
        if (!Names.Contains(name, StringComparer.Ordinal))
        {
            throw new RefusedException(new Finding(
                FindingCodes.NotFound, "page", name, Message.Of("answers.not-found", ("noun", "page"), ("id", name)),
                Message.Verbatim(Names)));
        }

        var document = Markdown.Parse(Text(name), Pipeline.Value);
        foreach (var link in document.Descendants<LinkInline>().ToList()) Redirect(link);
        var title = document.Descendants<HeadingBlock>().First().Inline!.Descendants<LiteralInline>().First().Content.ToString();
        // What may be wider than a phone scrolls by itself, and is reached by keyboard.
        var body = new StringBuilder(document.ToHtml(Pipeline.Value))
            .Replace("<table>", HtmlPage.Wide("Table") + "<table>").Replace("</table>", "</table></div>")
            .Replace("<pre>", "<pre tabindex=\"0\">");
        var own = equations.Where(e => e.Page.Path.StartsWith($"/guide/{name}#", StringComparison.Ordinal)).ToList();
        if (own.Count > 0) body.AppendLine("<h2>What answers are explained by</h2>");
        foreach (var equation in own) Equation(body, equation);
        return HtmlPage.Render(title, body.ToString(), "\nmain img{max-width:100%;height:auto}");
    }

    private static string Text(string name)
    {
        using var reader = new StreamReader(Home.GetManifestResourceStream(Prefix + name + Suffix)!, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    // Files of docs/ are pages here, and its figures part of them; what else lies in the repository has no address.
    private static void Redirect(LinkInline link)
    {
        var address = link.Url ?? "";
        if (address.StartsWith('#') || address.StartsWith("https://", StringComparison.Ordinal)) return;
        if (link.IsImage && Home.GetManifestResourceStream(Prefix + address) is { } figure)
        {
            using var bytes = new MemoryStream();
            using (figure) figure.CopyTo(bytes);
            link.Url = "data:image/svg+xml;base64," + Convert.ToBase64String(bytes.GetBuffer(), 0, (int)bytes.Length);
            return;
        }

        var parts = address.Split('#', 2);
        if (parts[0].EndsWith(Suffix, StringComparison.Ordinal) && Names.Contains(parts[0][..^Suffix.Length], StringComparer.Ordinal))
        {
            link.Url = new Address($"/guide/{parts[0][..^Suffix.Length]}").ToString() + (parts.Length > 1 ? "#" + parts[1] : "");
            return;
        }

        foreach (var child in link.ToList())
        {
            child.Remove();
            link.InsertBefore(child);
        }

        link.Remove();
    }

    private static void Equation(StringBuilder body, Equation equation)
    {
        body.AppendLine(CultureInfo.InvariantCulture, $"<h3 id=\"{equation.Id}\">{HtmlPage.Encode(equation.Name)}</h3>")
            .AppendLine(CultureInfo.InvariantCulture, $"<p>{HtmlPage.Encode(equation.Text)}</p>")
            .AppendLine(CultureInfo.InvariantCulture, $"<p class=\"small\">{HtmlPage.Encode(equation.Symbols)}</p>");
        if (equation.Note is { } note) body.AppendLine(CultureInfo.InvariantCulture, $"<p class=\"small\">{HtmlPage.Encode(note)}</p>");
        var derived = equation.Documentation[(equation.Documentation.IndexOf('#', StringComparison.Ordinal) + 1)..];
        body.Append(CultureInfo.InvariantCulture, $"<p class=\"small\"><a href=\"#{derived}\">Where it is derived</a>");
        foreach (var other in equation.RestsOn)
            body.Append(CultureInfo.InvariantCulture, $" · rests on <a href=\"{HtmlPage.Encode(EquationIds.Address(other))}\">{other}</a>");
        body.AppendLine("</p>");
    }
}
