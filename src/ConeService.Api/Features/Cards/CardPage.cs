using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ConeService.Api.Features.Figures;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Firing;

namespace ConeService.Api.Features.Cards;

/// <summary>A card as a page: the frame that all cards share.</summary>
internal static class CardPage
{
    private const int MostSources = 6;

    /// <summary>The page.</summary>
    /// <param name="card">The card.</param>
    /// <param name="look">Its look.</param>
    /// <param name="reference">The data in use.</param>
    /// <param name="origin">The configured address of the service, for what others must reach from elsewhere; null where there is
    /// none.</param>
    public static string Render(Card card, CardLook look, FiringReference reference, string? origin)
    {
        var body = Body(card, look);
        var page = new StringBuilder()
            .AppendLine(CultureInfo.InvariantCulture, $"<main><h1>{HtmlPage.Encode(card.Title)}</h1>")
            .Append(body.Markup).AppendLine("</main>")
            .Append(Foot(card, look, reference));
        return HtmlPage.Text(
            card.Title, page.ToString(), look.IsShort ? CardStyle.Css + CardStyle.Short : CardStyle.Css,
            head: Head(card, look, body, reference, origin), colours: CardStyle.Colours(look.Theme));
    }

    /// <summary>The height that a frame should give it, px: of a short card at 320, of a full one at 640 px of width.</summary>
    public static int Height(Card card, CardLook look) => Body(card, look).Height;

    private static CardBody Body(Card card, CardLook look)
    {
        var body = new CardBody(look);
        body.Place("", look.IsShort ? 34 : 52, needed: true);
        card.Write(body);
        return body;
    }

    private static string Foot(Card card, CardLook look, FiringReference reference)
    {
        var dataset = reference.Dataset;
        var (package, full) = ($"Data {HtmlPage.Encode(dataset.VersionId)}", Address("/cards/" + card.Path));
        // What leads out of the card opens a page of its own: within a frame nothing but cards may stand.
        if (look.IsShort)
        {
            return "<footer><p class=\"small\">Witness cones decide, not the meter. "
                + $"<a href=\"{full}\" target=\"_blank\" rel=\"noopener\">The whole card, with sources</a>. {package}.</p></footer>";
        }

        var names = dataset.Sources.ToDictionary(s => s.Id, s => s.Citation);
        var sources = card.Sources.Distinct().ToList();
        var cited = string.Join("; ", sources.Take(MostSources).Select(s => HtmlPage.Encode(names[s].TrimEnd('.'))));
        var more = sources.Count > MostSources ? $"; and {sources.Count - MostSources} more" : "";
        // What was refused rests on no source.
        var source = sources.Count == 0 ? "" : $"Source: {cited}{more}. ";
        return $"<footer><p class=\"small\">{source}{package}, {HtmlPage.Encode(dataset.License)}. "
            + $"<span class=\"more\"><a href=\"{Address("/v1/sources")}\" target=\"_blank\" rel=\"noopener\">All sources</a> · "
            + $"<a href=\"{Address("/cards")}\" target=\"_blank\" rel=\"noopener\">More cards</a></span></p></footer>";
    }

    // Open Graph, JSON-LD and the discovery of oEmbed. Who reads them reads them from elsewhere, so the addresses are whole where the
    // service knows under which name it is reached.
    private static string Head(Card card, CardLook look, CardBody body, FiringReference reference, string? origin)
    {
        var page = Whole(origin, "/cards/" + card.Path);
        // A card that is pinned to a package is embedded pinned.
        var pinned = CardLine.Address(Whole(origin, ""), card, new(CardSize.Full, CardTheme.Light, IsChosen: false, look.Dataset));
        var figure = FigureKinds.Of(reference, card.Path);
        var (title, description) = (HtmlPage.Encode(card.Title), HtmlPage.Encode(card.Description));
        var embed = HtmlPage.Encode(Whole(origin, "/oembed?url=" + Uri.EscapeDataString(pinned)));
        return $"""

            <meta name="description" content="{description}">
            <meta property="og:title" content="{title}"><meta property="og:type" content="article">
            <meta property="og:description" content="{description}"><meta property="og:site_name" content="ConeService">
            <meta property="og:url" content="{HtmlPage.Encode(page)}">
            <meta property="og:image" content="{HtmlPage.Encode(Whole(origin, $"/figures/{figure}.png"))}">
            <meta property="og:image:alt" content="{HtmlPage.Encode(FigureKinds.Alt(figure))}">
            <link rel="canonical" href="{HtmlPage.Encode(page)}">
            <link rel="alternate" type="application/json+oembed" href="{embed}&amp;format=json" title="{title}">
            <link rel="alternate" type="text/xml+oembed" href="{embed}&amp;format=xml" title="{title}">
            <meta name="cone-service:height" content="{body.Height}">
            <script type="application/ld+json">{Markup(card, reference, page)}</script>
            """;
    }

    // What could end the block is escaped by the writer: < is \u003C.
    private static string Markup(Card card, FiringReference reference, string page) => new JsonObject
    {
        ["@context"] = "https://schema.org",
        ["@type"] = "LearningResource",
        ["name"] = card.Title,
        ["description"] = card.Description,
        ["url"] = page,
        ["inLanguage"] = "en",
        ["isAccessibleForFree"] = true,
        ["learningResourceType"] = "reference",
        ["license"] = "https://spdx.org/licenses/" + reference.Dataset.License,
        ["version"] = reference.Dataset.VersionId,
    }.ToJsonString(new JsonSerializerOptions());

    private static string Whole(string? origin, string path) => origin is null ? new Address(path).ToString() : origin + path;

    private static string Address(string path) => HtmlPage.Encode(new Address(path));
}
