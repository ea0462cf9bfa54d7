using System.Globalization;
using System.Text;
using ConeService.Api.Features.Embedding;
using ConeService.Api.Features.Figures;
using ConeService.Api.Features.Posters;
using ConeService.Api.Http;
using ConeService.Api.Http.Reach;
using ConeService.Contract.Answers;
using ConeService.Firing;

namespace ConeService.Api.Features.Cards;

/// <summary>All cards, one of them as it looks, and the lines to paste.</summary>
internal static class CardIndex
{
    // Shown where none was chosen.
    private const string First = ConvertCard.Path;

    private const string Style = """

        .both{display:flex;flex-wrap:wrap;gap:1rem}.both figure{margin:0}iframe,.shown img{border:1px solid var(--line);max-width:100%}
        textarea{width:100%;box-sizing:border-box;font:.85rem/1.4 ui-monospace,monospace;color:var(--ink);background:var(--paper);
        border:1px solid var(--line);padding:.4rem}label,figcaption{font-weight:600;font-size:.9rem}
        .names{columns:14rem;padding-left:1.1rem}details{margin:.3rem 0}summary{font-weight:600;min-height:1.6rem}
        .names a{display:inline-block;min-height:1.5rem}:focus-visible{outline:3px solid var(--accent);outline-offset:2px}
        @media print{iframe{display:none}}
        """;

    public static void Map(IEndpointRouteBuilder routes) => routes.MapRead("/cards", Page).WithQuery("card").WithEmptyFields()
        .WithName("listCards").WithSummary("Cards to embed, each with the lines to paste.")
        .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).ExcludeFromDescription();

    private static PreparedBody Page(string? card, HttpContext context, SnapshotHolder snapshots, ServiceAddress address)
    {
        var reference = snapshots.Current.Reference;
        var asked = string.IsNullOrWhiteSpace(card) ? First : card.Trim();
        var (full, look) = CardAddress.Read(snapshots.Current, asked, "card", CardSize.Full);
        var small = look with { Size = CardSize.Short };
        var root = address.Root(context.Request);
        var page = new StringBuilder().Append("<main><h1>Cards for course pages</h1>")
            .Append("<p>Each card answers one question from tables in which every value names its source. It is a page without a ")
            .Append("script: paste one line, and it works on a phone, on paper and with a screen reader. Choose a card; ")
            .Append("its lines stand below it.</p>")
            .Append(CultureInfo.InvariantCulture, $"<h2 id=\"shown\">{HtmlPage.Encode(full.Title)}</h2>")
            .Append(CultureInfo.InvariantCulture, $"<p>{HtmlPage.Encode(full.Description)}</p>");
        Lines(page, root, full, look, small);
        List(page, reference);
        Figures(page, root);
        Posters(page, reference);
        Kept(page);
        return HtmlPage.Render("Cards for course pages", page.Append("</main>").ToString(), Style);
    }

    private static void Lines(StringBuilder page, string root, Card card, CardLook look, CardLook small)
    {
        var (height, address) = (CardPage.Height(card, look), CardLine.Address(root, card, look));
        page.Append("<div class=\"both\">");
        Shown(page, $"Short, {CardLook.ShortWidth} × {CardLook.ShortHeight}", CardLook.ShortWidth, CardLook.ShortHeight, card, small);
        Shown(page, $"Full, {height} high at {CardLook.FullWidth} of width", CardLook.FullWidth, Math.Min(height, 560), card, look);
        page.Append("</div>");
        Line(page, "short", "Short card", CardLine.Frame(root, card, small, CardLook.ShortWidth, CardLook.ShortHeight));
        Line(page, "full", "Full card", CardLine.Frame(root, card, look, null, height));
        Line(page, "live", "Full card, live where scripts are allowed, and elsewhere as it is", "<cone-service>"
            + CardLine.Frame(root, card, look, null, height) + "</cone-service>"
            + $"<script src=\"{HtmlPage.Encode(root + EmbeddingEndpoints.Script)}\" defer></script>");
        Line(page, "link", "Link", $"<a href=\"{HtmlPage.Encode(address)}\">{HtmlPage.Encode(card.Title)}</a>");
    }

    private static void Shown(StringBuilder page, string caption, int width, int height, Card card, CardLook look)
    {
        var (source, title) = (CardLine.Address(new Address("").ToString(), card, look), $"{card.Title}: {caption}");
        page.Append(CultureInfo.InvariantCulture, $"<figure><figcaption>{HtmlPage.Encode(caption)}</figcaption>")
            .Append(CultureInfo.InvariantCulture, $"<iframe src=\"{HtmlPage.Encode(source)}\" title=\"{HtmlPage.Encode(title)}\" ")
            .Append(CultureInfo.InvariantCulture, $"width=\"{width}\" height=\"{height}\"></iframe></figure>");
    }

    private static void Line(StringBuilder page, string id, string label, string line) => page
        .Append(CultureInfo.InvariantCulture, $"<p><label for=\"l-{id}\">{label}</label>")
        .Append(CultureInfo.InvariantCulture, $"<textarea id=\"l-{id}\" readonly rows=\"3\" spellcheck=\"false\">")
        .Append(HtmlPage.Encode(line)).Append("</textarea></p>");

    private static void List(StringBuilder page, FiringReference reference)
    {
        page.Append("<h2>All cards</h2><ul class=\"names\">");
        foreach (var kind in CardKinds.All.Where(k => k.Ids is null))
            page.Append("<li>").Append(Choice(kind.Name, kind.Tells)).Append("</li>");
        page.Append("</ul>");
        foreach (var kind in CardKinds.All.Where(k => k.Ids is not null))
        {
            page.Append(CultureInfo.InvariantCulture, $"<details><summary>{HtmlPage.Encode(kind.Tells)}</summary><ul class=\"names\">");
            foreach (var (id, name) in kind.Ids!(reference))
                page.Append("<li>").Append(Choice(kind.Name + kind.Between + id, CardWords.Sentence(name))).Append("</li>");
            page.Append("</ul></details>");
        }
    }

    private static void Figures(StringBuilder page, string root)
    {
        page.Append("<h2>Figures</h2><p>Where frames are stripped, an image stays. Any cone and any schedule has one of its own.</p>");
        foreach (var (name, alt) in FigureKinds.All)
        {
            var image = $"<img src=\"{HtmlPage.Encode(root)}/figures/{name}.svg\" alt=\"{HtmlPage.Encode(alt)}\" width=\"640\">";
            Line(page, name, HtmlPage.Encode(alt), image);
        }
    }

    private static void Posters(StringBuilder page, FiringReference reference)
    {
        page.Append("<h2 id=\"posters\">Posters and hand-outs to print</h2><p>Each fills a sheet of A4, letter or A3; choose the paper on ")
            .Append("the page, then print it or keep it as a PDF by the print menu of the browser.</p><ul class=\"names\">");
        foreach (var (name, tells) in PosterKinds.Names(reference))
        {
            page.Append(CultureInfo.InvariantCulture, $"<li><a href=\"{HtmlPage.Encode(new Address("/posters/" + name))}\">")
                .Append(HtmlPage.Encode(CardWords.Sentence(tells))).Append("</a></li>");
        }

        page.Append("</ul>");
    }

    private static string Choice(string path, string name) =>
        $"<a href=\"{HtmlPage.Encode(new Address("/cards?card=" + Uri.EscapeDataString(path)))}#shown\">{HtmlPage.Encode(name)}</a>";

    private static void Kept(StringBuilder page) => page.Append("""
        <h2>What course systems keep</h2>
        <ul>
        <li>Scripts are stripped almost everywhere: nothing here needs one.</li>
        <li>A frame (iframe) is kept only from hosts that the administrator allows, and only over https. Ask for this host to be
        allowed; until then paste a figure or the link.</li>
        <li>A figure (img) is kept nearly everywhere.</li>
        <li>Forms are stripped from course pages and work only inside the frame, where the card is its own page.</li>
        <li>Where scripts are allowed, the line with <code>cone-service</code> makes the card part of the page: it answers while one
        types, and is as high as it needs to be. <code>&lt;cone-service frame&gt;</code> keeps the frame and gives it its height. The page
        must allow this host for scripts and connections (<code>script-src</code>, <code>connect-src</code>).</li>
        <li>A card is light in a frame. <code>?theme=dark</code> makes it dark, <code>?theme=auto</code> as the reader has set the screen;
        <code>?size=short</code> fits into 320 × 360.</li>
        </ul>
        """);
}
