using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Features.Posters;

/// <summary>A poster as a page: on the screen it can be read and another paper chosen, printed it fills its paper.</summary>
internal static class PosterPage
{
    // Letters as large as all fits with, and never smaller than can be read in the hand: 7.5 pt.
    private const double Largest = 6.2;
    private const double Smallest = 2.65;
    private const double Step = 0.05;
    private const int MostSources = 4;

    private const string Css = """

        h1{font-size:1.9rem;margin:0 0 .4rem;border-bottom:4px solid var(--accent);padding-bottom:.2rem}
        h2{font-size:1.25rem;line-height:1.2;margin:.7rem 0 .2rem}p{margin:0 0 .6rem}ul{margin:0 0 .3rem;padding-left:1.1rem}
        li{margin:0 0 .2rem}.lead{font-size:1.25rem}.warn{border-left:.35rem solid var(--accent);padding-left:.6rem;font-weight:600}
        .small{font-size:.8rem}.tick{list-style:none;padding-left:1.5rem}.tick li{position:relative}
        .tick li::before{content:"";position:absolute;left:-1.5rem;top:.2rem;width:.85rem;height:.85rem;border:2px solid var(--ink)}
        table{line-height:1.4}td,th{padding:.2rem .6rem .2rem 0;overflow-wrap:break-word}tbody th{font-weight:700}
        .figures td,.figures th{padding:.07rem .4rem .07rem 0}.figures td{text-align:right;font-variant-numeric:tabular-nums}
        .figures thead th:not(:first-child){text-align:right}.figures tbody th{font-size:1.05em;line-height:1.3}
        .figures tr:nth-child(5n){border-bottom:2px solid var(--ink)}
        .figure img{width:86%;height:auto;display:block;margin:0 auto}
        .blanks{list-style:none;padding:0;display:flex;flex-wrap:wrap;gap:0 1.5rem}
        .blanks li{flex:1 1 40%;margin:0;padding-top:1rem;border-bottom:1px solid var(--ink);line-height:1.5}
        .papers a{display:inline-block;min-width:1.5rem;min-height:1.5rem;margin-right:.6rem}
        :focus-visible{outline:3px solid var(--accent);outline-offset:2px}
        .sheet{break-inside:avoid}.sheet+.sheet{border-top:1px solid var(--line);padding-top:1rem}
        @media screen and (max-width:30rem){h1{font-size:1.5rem}.blanks li{flex-basis:100%}
        table:not(.figures),table:not(.figures) caption,table:not(.figures) tbody,table:not(.figures) tr,table:not(.figures) td,
        table:not(.figures) tbody th{display:block}table:not(.figures) thead{position:absolute;width:1px;height:1px;overflow:hidden;
        clip-path:inset(50%)}table:not(.figures) td{border:0}table:not(.figures) tbody th{border:0;padding-top:.5rem}
        table:not(.figures) tr{border-bottom:1px solid var(--line)}.figures{font-size:.82rem}.figures td,.figures th{padding-right:.1rem}}
        @media print{.papers{display:none}body{line-height:1.4}.sheet+.sheet{break-before:page;border:0;padding:0}
        a{color:inherit;text-decoration:none}}
        """;

    /// <summary>The page.</summary>
    public static PreparedBody Render(Poster poster, Paper paper, FiringReference reference)
    {
        var size = Size(poster, paper);
        var print = string.Create(CultureInfo.InvariantCulture,
            $"@page{{size:{paper.Css()};margin:{PaperSizes.Margin:0}mm}}@media print{{html{{font-size:{size:0.00}mm}}}}");
        var body = new StringBuilder("<main>");
        foreach (var (sheet, i) in poster.Pages.Select((s, i) => (s, i)))
        {
            body.Append("<section class=\"sheet\">");
            if (i == 0) body.Append("<h1>").Append(HtmlPage.Encode(poster.Title)).Append("</h1>").Append(Papers(poster, paper));
            body.Append(sheet.Markup);
            if (i == poster.Pages.Count - 1) body.Append("<p class=\"small\">").Append(Foot(poster, reference)).Append("</p>");
            body.Append("</section>");
        }

        return HtmlPage.Render(poster.Title, body.Append("</main>").ToString(), Css + print);
    }

    // Of the first sheet the title takes its part, of the last the foot.
    private static double Size(Poster poster, Paper paper)
    {
        var (width, height) = paper.Room();
        var most = paper == Paper.A3 ? Largest * Math.Sqrt(2) : Largest;
        for (var size = most; size > Smallest; size -= Step)
        {
            var lines = Math.Ceiling(poster.Title.Length * size * 1.9 * 0.53 / width);
            var fits = poster.Pages.Select((p, i) => p.Height(size, width) + (i == 0 ? size * ((1.9 * 1.2 * lines) + 1.2) : 0)
                + (i == poster.Pages.Count - 1 ? size * 0.8 * 1.4 * 4 : 0)).All(h => h <= height);
            if (fits) return size;
        }

        return Smallest;
    }

    private static string Papers(Poster poster, Paper now)
    {
        var links = Enum.GetValues<Paper>().Select(p => p == now
            ? $"<strong>{Name(p)}</strong>"
            : $"<a href=\"{HtmlPage.Encode(new Address($"/posters/{poster.Path}?paper={EnumWords.Word(p)}"))}\">{Name(p)}</a>");
        return $"<p class=\"papers\">To print on {string.Join(' ', links)} · "
            + $"<a href=\"{HtmlPage.Encode(new Address("/cards"))}#posters\">all posters and cards</a></p>";
    }

    private static string Name(Paper paper) => paper == Paper.Letter ? "letter" : paper.ToString();

    private static string Foot(Poster poster, FiringReference reference)
    {
        var (dataset, sources) = (reference.Dataset, poster.Sources.Distinct().ToList());
        var names = dataset.Sources.ToDictionary(s => s.Id, s => s.Citation);
        var cited = string.Join("; ", sources.Take(MostSources).Select(s => Short(names[s])));
        var more = sources.Count > MostSources ? $"; and {sources.Count - MostSources} more" : "";
        return HtmlPage.Encode($"Source: {cited}{more}. Data package {dataset.VersionId}, {dataset.License}.");
    }

    // The foot has room for who and what, not for everything.
    private static string Short(string citation)
    {
        const int Most = 70;
        var text = citation.TrimEnd('.');
        return text.Length <= Most ? text : text[..text.LastIndexOf(' ', Most)].TrimEnd(',', ';', ':', '.', '(', '&', ' ') + " …";
    }
}
