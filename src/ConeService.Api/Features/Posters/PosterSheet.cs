using System.Globalization;
using System.Text;
using ConeService.Api.Http;

namespace ConeService.Api.Features.Posters;

/// <summary>
/// One side of paper. How high each part becomes at a size of letters is reckoned, wide, so that the largest letters can be found with
/// which all of it fits.
/// </summary>
internal sealed class PosterSheet
{
    // Of the size of letters: mean width of one, and height of a line.
    private const double Letter = 0.53;
    private const double Line = 1.4;

    private readonly StringBuilder markup = new();
    private readonly List<Func<double, double, double>> heights = [];

    /// <summary>The markup so far.</summary>
    public string Markup => markup.ToString();

    /// <summary>How high it is, mm.</summary>
    /// <param name="size">Size of letters, mm.</param>
    /// <param name="width">Width of the paper within its margins, mm.</param>
    public double Height(double size, double width) => heights.Sum(h => h(size, width));

    /// <summary>A paragraph.</summary>
    public PosterSheet Say(string text, string style = "") => Put(
        $"<p{(style.Length > 0 ? $" class=\"{style}\"" : "")}>{HtmlPage.Encode(text)}</p>",
        (size, width) =>
        {
            var own = style switch { "lead" => size * 1.25, "small" => size * 0.8, _ => size };
            return (Lines(text, own, style == "warn" ? width - (2 * own) : width) * own * Line) + (size * 0.6);
        });

    /// <summary>A heading.</summary>
    public PosterSheet Heading(string text) => Put(
        $"<h2>{HtmlPage.Encode(text)}</h2>", (size, width) => (Lines(text, size * 1.25, width) * size * 1.25 * 1.2) + (size * 0.9));

    /// <summary>Entries one under another, with a box to tick where asked.</summary>
    public PosterSheet List(string heading, IEnumerable<string> entries, bool isTicked = false)
    {
        var all = entries.Where(e => e.Length > 0).ToList();
        if (all.Count == 0) return this;
        Heading(heading);
        var items = string.Concat(all.Select(e => $"<li>{HtmlPage.Encode(e)}</li>"));
        return Put(
            $"<ul{(isTicked ? " class=\"tick\"" : "")}>{items}</ul>",
            (size, width) => all.Sum(e => (Lines(e, size, width - (size * 1.8)) * size * Line) + (size * 0.2)) + (size * 0.3));
    }

    /// <summary>A table of which every row takes as many lines as its longest cell.</summary>
    /// <param name="caption">What it shows.</param>
    /// <param name="heads">Heads of the columns.</param>
    /// <param name="rows">The rows, the first cell of each naming it.</param>
    /// <param name="shares">Share of the width that each column has; null: as the cells need, in one line.</param>
    /// <param name="style">Class of the table.</param>
    public PosterSheet Table(
        string caption, string[] heads, IReadOnlyList<string[]> rows, double[]? shares = null, string style = "")
    {
        var html = new StringBuilder($"<table class=\"{style}\"><caption>{HtmlPage.Encode(caption)}</caption>");
        if (shares is not null)
        {
            html.Append("<colgroup>")
                .AppendJoin("", shares.Select(s => string.Create(CultureInfo.InvariantCulture, $"<col style=\"width:{s * 100:0}%\">")))
                .Append("</colgroup>");
        }

        html.Append("<thead><tr>").AppendJoin("", heads.Select(h => $"<th scope=\"col\">{HtmlPage.Encode(h)}</th>"))
            .Append("</tr></thead><tbody>");
        foreach (var row in rows)
        {
            html.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{HtmlPage.Encode(row[0])}</th>")
                .AppendJoin("", row.Skip(1).Select(c => $"<td>{HtmlPage.Encode(c)}</td>")).Append("</tr>");
        }

        var padding = style.Length > 0 ? 0.15 : 0.4;
        return Put(html.Append("</tbody></table>").ToString(), (size, width) => (size * Line * 2.6) + rows.Sum(r =>
            ((shares is null ? 1 : r.Select((c, i) => Lines(c, size, (width * shares[i]) - (size * 0.6))).Max()) * size * Line)
            + (size * padding)));
    }

    /// <summary>A figure of this service.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="alt">What it shows.</param>
    /// <param name="ratio">Its height as a share of its width.</param>
    public PosterSheet Figure(string name, string alt, double ratio)
    {
        var source = HtmlPage.Encode(new Contract.Answers.Address($"/figures/{name}.svg"));
        var image = $"<p class=\"figure\"><img src=\"{source}\" alt=\"{HtmlPage.Encode(alt)}\"></p>";
        return Put(image, (_, width) => (width * 0.86 * ratio) + 4);
    }

    /// <summary>Lines to write on.</summary>
    public PosterSheet Blanks(params string[] labels) => Put(
        $"<ul class=\"blanks\">{string.Concat(labels.Select(l => $"<li>{HtmlPage.Encode(l)}</li>"))}</ul>",
        (size, _) => (labels.Length + 1) / 2 * size * 2.6);

    private static double Lines(string text, double size, double width) =>
        Math.Max(1, Math.Ceiling(text.Length * size * Letter * 1.05 / Math.Max(width, size * 4)));

    private PosterSheet Put(string html, Func<double, double, double> height)
    {
        markup.AppendLine(html);
        heights.Add(height);
        return this;
    }
}
