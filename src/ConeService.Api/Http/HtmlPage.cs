using System.Net;
using ConeService.Contract.Answers;
using ConeService.Contract.Texts;

namespace ConeService.Api.Http;

/// <summary>A small page of our own: no script, readable on a phone, on paper and in the dark.</summary>
internal static class HtmlPage
{
    public const string MediaType = "text/html";

    /// <summary>Colours on light ground, and on dark; what is printed is always the first.</summary>
    public const string Light = "--ink:#2b2320;--paper:#fbf8f3;--line:#cfc4b6;--accent:#8a3b12";

    /// <summary>Colours on dark ground.</summary>
    public const string Dark = "--ink:#eee6dc;--paper:#1d1917;--line:#4a413a;--accent:#f0a070";

    /// <summary>Colours as the reader has them.</summary>
    public const string AsTheReader = $$$"""
        :root{color-scheme:light dark;{{{Light}}}}
        @media (prefers-color-scheme:dark){:root{{{{Dark}}}}}
        """;

    // Columns that fit on paper held upright, and on its side.
    private const int MostUpright = 5;
    private const int MostBeside = 12;

    private const string Style = """

        body{font:1rem/1.5 system-ui,sans-serif;color:var(--ink);background:var(--paper);margin:0 auto;max-width:44rem;padding:1rem}
        h1,h2{line-height:1.2}h1,h2,h3{overflow-wrap:anywhere}a{color:var(--accent)}
        code,pre{font-family:ui-monospace,monospace;overflow-wrap:anywhere}pre{overflow-x:auto;border:1px solid var(--line);padding:.6rem}
        table{border-collapse:collapse;width:100%}caption{text-align:left;font-weight:600;padding:.3rem 0}
        th,td{border-bottom:1px solid var(--line);padding:.25rem .5rem .25rem 0;text-align:left;vertical-align:top}
        tbody th{font-weight:400}.lead{font-size:1.15rem}
        td.n,th.n{text-align:right;font-variant-numeric:tabular-nums}
        .small{font-size:.85rem}.wide{overflow-x:auto}
        @media print{:root{--ink:#000;--paper:#fff;--line:#999;--accent:#000}body{max-width:none;padding:0}
        .wide{overflow:visible}.wide td{overflow-wrap:anywhere}}
        """;

    /// <summary>How tables of many columns are printed, as <see cref="Wide(string, int)"/> tells them apart.</summary>
    public const string Printed = """

        @media print{.wide table{font-size:9pt}
        .dense table{font-size:7pt;line-height:1.25}.dense th,.dense td{padding:.1rem .3rem .1rem 0}
        .rows table,.rows tbody,.rows caption{display:block}.rows thead{display:none}
        .rows tr{display:block;border-bottom:1px solid var(--line);padding:.2rem 0;break-inside:avoid;font-size:8pt}
        .rows th,.rows td{display:inline;border:0;padding:0;text-align:left}
        .rows td::before{content:attr(data-h) ": ";font-weight:600}.rows td::after{content:"; "}}
        """;

    /// <summary>The paper of a page with tables that fit on it only when it lies on its side.</summary>
    public const string OnItsSide = "@media print{@page{size:landscape}}\n";

    /// <summary>On a phone the rows of a table of the class “many” are stacked, each cell under the name of its column
    /// (<c>data-h</c>).</summary>
    public const string Stacked = """

        @media screen and (max-width:30rem){
        .many,.many caption,.many tbody,.many tr,.many td,.many tbody th{display:block}
        .many thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
        .many td{border:0;padding:.05rem 0;overflow-wrap:anywhere}.many tbody th{border:0;padding-top:.4rem;overflow-wrap:anywhere}
        .many tr{border-bottom:1px solid var(--line)}.many td[data-h]::before{content:attr(data-h) ": ";font-weight:600}}
        """;

    /// <summary>The beginning of a part that scrolls sideways where there is no room, by keyboard too; a div.</summary>
    /// <param name="name">What it holds, plain text.</param>
    public static string Wide(string name) => $"<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"{Encode(name)}\">";

    /// <summary>The same for a table of many columns, of which paper can't show all beside each other: printed on its side in small type,
    /// or, of very many, each row as a paragraph in which the cells stand behind the names of their columns (<c>data-h</c>).</summary>
    /// <param name="name">What it holds, plain text.</param>
    /// <param name="columns">How many columns it has.</param>
    public static string Wide(string name, int columns) =>
        Wide(name).Replace("class=\"wide\"", $"class=\"wide{(IsRows(columns) ? " rows" : IsDense(columns) ? " dense" : "")}\"",
            StringComparison.Ordinal);

    /// <summary>Whether a table fits on paper only when that lies on its side.</summary>
    public static bool IsDense(int columns) => columns is > MostUpright and <= MostBeside;

    /// <summary>Whether a table has more columns than fit beside each other on any paper.</summary>
    public static bool IsRows(int columns) => columns > MostBeside;

    /// <summary>A whole page around a body of trusted markup.</summary>
    /// <param name="title">Title, plain text.</param>
    /// <param name="body">Markup; the caller has encoded its texts.</param>
    /// <param name="style">Style of this page alone.</param>
    /// <param name="language">Language of its headings.</param>
    public static PreparedBody Render(string title, string body, string style = "", string language = MessageBook.English) =>
        PreparedBody.Text(Text(title, body, style, language), MediaType);

    /// <summary>A whole page as text, for an answer that is not kept.</summary>
    /// <param name="title">Title, plain text.</param>
    /// <param name="body">Markup; the caller has encoded its texts.</param>
    /// <param name="style">Style of this page alone.</param>
    /// <param name="language">Language of its headings.</param>
    /// <param name="head">What else stands in the head: trusted markup.</param>
    /// <param name="colours">Its colours; those of the reader where nothing is said.</param>
    public static string Text(
        string title, string body, string style = "", string language = MessageBook.English, string head = "",
        string colours = AsTheReader) => $"""
        <!DOCTYPE html>
        <html lang="{language}">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>{Encode(title)}</title>{head}
        <style>
        {colours}{Style}{style}
        </style>
        </head>
        <body>
        {(body.Contains("<main", StringComparison.Ordinal) ? body : $"<main>\n{body}\n</main>")}
        </body>
        </html>

        """;

    /// <summary>Plain text made fit for markup.</summary>
    public static string Encode(string? text) => WebUtility.HtmlEncode(text ?? "");

    /// <summary>An address as its reader reaches it, made fit for markup.</summary>
    public static string Encode(Address address) => Encode(address.ToString());

    /// <summary>A sentence in the language of the reader, made fit for markup.</summary>
    public static string Encode(Message message) => Encode(message.ToString());
}
