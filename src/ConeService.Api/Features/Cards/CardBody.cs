using System.Globalization;
using System.Text;
using ConeService.Api.Http;

namespace ConeService.Api.Features.Cards;

/// <summary>
/// What stands on a card, written from the most important down. A short card takes of it what fits, and nothing on it is cut off. How high
/// it becomes is reckoned in widths of letters, wide ones, so that the published height is enough with any fonts.
/// </summary>
/// <param name="look">The look of the card.</param>
internal sealed class CardBody(CardLook look)
{
    // Foot and edges of a card, px.
    private const int ShortFoot = 58;
    private const int FullFoot = 90;

    // Letters of some fonts are wider than those that the reckoning was held against.
    private const double Margin = 1.12;

    private readonly StringBuilder markup = new();
    private readonly int width = look.IsShort ? CardLook.ShortWidth : CardLook.FullWidth;
    private double height = look.IsShort ? ShortFoot : FullFoot;

    /// <summary>The look of the card.</summary>
    public CardLook Look => look;

    /// <summary>The markup so far.</summary>
    public string Markup => markup.ToString();

    /// <summary>Its height, px, at the width for which heights are told.</summary>
    public int Height => look.IsShort ? CardLook.ShortHeight : ((int)Math.Ceiling(height * Margin / 20) * 20) + 20;

    /// <summary>Whether something was left out of a short card.</summary>
    public bool IsCut { get; private set; }

    private double Line => look.IsShort ? 18.2 : 22.5;

    private double Letter => look.IsShort ? 7.0 : 8.4;

    private double Inner => look.IsShort ? width - 20 : width - 32;

    /// <summary>A paragraph.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="style">Class of the paragraph.</param>
    /// <param name="needed">Whether a short card must have it, whatever else it leaves out.</param>
    public CardBody Say(string? text, string style = "", bool needed = false) => Say(HtmlPage.Encode(text), text, style, needed);

    /// <summary>A paragraph of trusted markup.</summary>
    /// <param name="html">The markup.</param>
    /// <param name="text">Its text, by which its height is reckoned.</param>
    /// <param name="style">Class of the paragraph.</param>
    /// <param name="needed">Whether a short card must have it.</param>
    public CardBody Say(string html, string? text, string style, bool needed = false)
    {
        if (string.IsNullOrEmpty(text)) return this;
        var larger = style.Contains("lead", StringComparison.Ordinal) ? 1.15 : 1;
        Take($"<p{Class(style)}>{html}</p>", (Lines(text.Length * larger, Inner) * Line * larger) + (look.IsShort ? 6 : 12), needed);
        return this;
    }

    /// <summary>The heading of what follows.</summary>
    public CardBody Heading(string text, bool needed = false)
    {
        Take($"<h2>{HtmlPage.Encode(text)}</h2>", (Lines(text.Length * 1.2, Inner) * Line * 1.15) + (look.IsShort ? 8 : 18), needed);
        return this;
    }

    /// <summary>A list under a heading; a short card takes the first entries, as many as fit.</summary>
    public CardBody List(string heading, IEnumerable<string> entries)
    {
        var all = entries.Where(e => e.Length > 0).ToList();
        if (all.Count == 0) return this;
        var room = Room - Line - 12;
        var taken = Fitting(all, e => (Lines(e.Length, Inner - 20) * Line) + 3, room);
        if (taken.Count == 0) return this;
        var html = $"<h2>{HtmlPage.Encode(heading)}</h2><ul>{string.Concat(taken.Select(e => $"<li>{HtmlPage.Encode(e)}</li>"))}</ul>";
        Take(html, (Line * 1.15) + (look.IsShort ? 14 : 30) + taken.Sum(e => (Lines(e.Length, Inner - 20) * Line) + 3), true);
        return this;
    }

    /// <summary>A table; its first column names the rows. A short card takes the first rows, as many as fit.</summary>
    /// <param name="caption">What it shows.</param>
    /// <param name="heads">Heads of the columns.</param>
    /// <param name="rows">The rows.</param>
    public CardBody Table(string caption, Cell[] heads, IEnumerable<Cell[]> rows) =>
        Table(caption, heads, [("", (IReadOnlyList<Cell[]>)[.. rows])]);

    /// <summary>A table in parts, each with a line of its own above it.</summary>
    public CardBody Table(string caption, Cell[] heads, IReadOnlyList<(string Name, IReadOnlyList<Cell[]> Rows)> parts)
    {
        double Row(Cell[] cells) => (IsOneLine(cells) ? 1 : Tallest(cells)) * Line + (look.IsShort ? 6 : 9);
        var rows = parts.SelectMany(p => p.Rows).ToList();
        var top = (Lines(caption.Length, Inner) * Line) + Row(heads) + (look.IsShort ? 12 : 24)
            + parts.Where(p => p.Name.Length > 0).Sum(p => (Lines(p.Name.Length, Inner) * Line) + 9);
        var taken = Fitting(rows, Row, Room - top);
        if (taken.Count == 0) return this;
        // On a phone the rows of a table of many columns are stacked, each cell under the name of its column.
        var isStacked = heads.Length > 3;
        var html = new StringBuilder("<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"").Append(HtmlPage.Encode(caption))
            .Append(isStacked ? "\"><table class=\"many\"><caption>" : "\"><table><caption>")
            .Append(HtmlPage.Encode(caption)).Append("</caption><thead><tr>");
        foreach (var head in heads) html.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\"{Number(head)}>{head.Html}</th>");
        html.Append("</tr></thead>");
        var left = taken.Count;
        foreach (var (name, own) in parts)
        {
            if (left <= 0) break;
            html.Append("<tbody>");
            if (name.Length > 0)
            {
                html.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"rowgroup\" colspan=\"{heads.Length}\" class=\"part\">")
                    .Append(HtmlPage.Encode(name)).Append("</th></tr>");
            }


            foreach (var cells in own.Take(left)) Write(html, cells, isStacked ? heads : []);
            left -= own.Count;
            html.Append("</tbody>");
        }

        Take(html.Append("</table></div>").ToString(), top + taken.Sum(Row), true);
        return this;
    }

    /// <summary>Trusted markup of a known height: a form, a figure.</summary>
    /// <param name="html">The markup.</param>
    /// <param name="pixels">Its height.</param>
    /// <param name="needed">Whether a short card must have it.</param>
    public CardBody Place(string html, int pixels, bool needed = false)
    {
        Take(html, pixels, needed);
        return this;
    }

    // What a short card still has room for, px.
    private double Room => look.IsShort ? CardLook.ShortHeight - height : double.PositiveInfinity;

    private static string Class(string style) => style.Length > 0 ? $" class=\"{style}\"" : "";

    private static string Number(Cell cell) => cell.IsNumber ? " class=\"n\"" : "";

    private static void Write(StringBuilder html, Cell[] cells, Cell[] names)
    {
        html.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\"{Number(cells[0])}>{cells[0].Html}</th>");
        for (var i = 1; i < cells.Length; i++)
        {
            var name = names.Length > 0 ? $" data-h=\"{HtmlPage.Encode(names[i].Text)}\"" : "";
            html.Append(CultureInfo.InvariantCulture, $"<td{Number(cells[i])}{name}>{cells[i].Html}</td>");
        }

        html.Append("</tr>\n");
    }

    // Columns are as wide as the widest of their cells, so that a row has less room than its own letters need.
    private bool IsOneLine(Cell[] cells) =>
        cells.Sum(c => c.Text.Length * Letter) <= Inner * (look.IsShort || cells.Length > 3 ? 0.62 : 0.75);

    // A browser gives columns room by what stands in them: the more, the more lines there still are.
    private double Tallest(Cell[] cells)
    {
        var total = cells.Sum(c => Math.Max(6.0, c.Text.Length));
        return cells.Max(c => Lines(c.Text.Length * (look.IsShort ? 1.15 : 1.2), (Inner * Math.Max(6.0, c.Text.Length) / total) - 10));
    }

    private double Lines(double letters, double room) => Math.Max(1, Math.Ceiling(letters * Letter * 1.04 / Math.Max(40, room)));

    private List<T> Fitting<T>(List<T> all, Func<T, double> of, double room)
    {
        var taken = new List<T>();
        foreach (var one in all)
        {
            room -= of(one);
            if (room < 0) break;
            taken.Add(one);
        }

        IsCut |= taken.Count < all.Count;
        return taken;
    }

    private void Take(string html, double pixels, bool needed)
    {
        if (!needed && pixels > Room)
        {
            IsCut = true;
            return;
        }

        markup.AppendLine(html);
        height += pixels;
    }
}
