using System.Text.RegularExpressions;

namespace ConeService.Api.Tests.Browser;

/// <summary>The week sheet of the sample studio as it hangs beside the kilns, on a phone and before a screen reader.</summary>
public sealed partial class PlanSheetTests(Support.Api api, Chromium chromium) : IClassFixture<Chromium>, IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("cone-plans-");

    public void Dispose() => directory.Delete(recursive: true);

    [Fact]
    public async Task Axe_finds_nothing_nothing_scrolls_sideways_and_each_loading_list_is_a_page()
    {
        var body = await File.ReadAllTextAsync(Path.Combine(Support.Repository.Root, "samples", "studio", "request.json"),
            Support.Api.Cancel);
        using var response = await api.Post("/v1/plans?seconds=0.5", body, accept: "text/html");
        var html = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        var file = Path.Combine(directory.FullName, "plan.html");
        await File.WriteAllTextAsync(file, html, Support.Api.Cancel);
        var url = new Uri(file).ToString();
        var lists = List().Count(html);

        // Every piece of a list with its number, shelf by shelf; the cones; the sheet behind it.
        Assert.InRange(lists, 3, 40);
        Assert.Equal(lists, Sheet().Count(html));
        Assert.Equal(lists, Cones().Count(html));
        var faults = await Looks.Faults(chromium, url);
        Assert.True(faults.Count == 0, string.Join('\n', faults));

        // The weeks on a page or two, each list on one or, with what the load check still says of its pieces, on two, and the cautions
        // on one or two.
        var pages = Page().Count(System.Text.Encoding.Latin1.GetString(await chromium.Pdf(url)));
        Assert.InRange(pages, lists + 2, (2 * lists) + 5);
    }

    [Fact]
    public async Task Nothing_is_cut_off_at_the_edge_of_the_paper()
    {
        // Seven kilns: more than go side by side.
        var kilns = string.Join(',', Enumerable.Range(1, 7).Select(n => $$$"""
            {"kiln":{"id":"Kiln number {{{n}}}","heat":"electric","maxCone":"8","atmospheres":["oxidation"],
            "interior":{"heightMillimetres":500,"diameterMillimetres":450},"kilowatts":6},
            "firings":[{"firingKind":"bisque","cone":"06","atmosphere":"oxidation","minutes":900,
            "kilowattHours":30}],"starts":["2027-01-12T10:00"]}
            """));
        using var response = await api.Post("/v1/plans?seconds=0.5", $$$"""
            {"horizon":{"from":"2027-01-11T00:00","to":"2027-01-18T00:00"},"timeZone":"Europe/Berlin","kilns":[{{{kilns}}}],
            "pieces":[{"piece":{"id":"an-unusually-long-name-of-a-piece-without-a-place-to-break-it-anywhere","count":9,
            "body":"red-earthenware",
            "state":"bone-dry","size":{"heightMillimetres":90,"widthMillimetres":90}},"due":"2027-01-16T12:00"}]}
            """, accept: "text/html");
        Assert.Equal(200, (int)response.StatusCode);
        var file = Path.Combine(directory.FullName, "seven.html");
        await File.WriteAllTextAsync(file, await response.Content.ReadAsStringAsync(Support.Api.Cancel), Support.Api.Cancel);
        // A4 within its margins is 186 mm, some 703 CSS pixels.
        var over = await chromium.Inspect(new Uri(file).ToString(), async page =>
        {
            await page.SetViewportAsync(new PuppeteerSharp.ViewPortOptions { Width = 703, Height = 1000 });
            await page.EmulateMediaTypeAsync(PuppeteerSharp.Media.MediaType.Print);
            return await page.EvaluateExpressionAsync<string[]>("""
                [...document.querySelectorAll('td,th,dd,small,li')].filter(e =>
                    e.getBoundingClientRect().right > 704 || e.scrollWidth > e.clientWidth + 1 && e.clientWidth).map(e => e.outerHTML)
                """);
        });
        Assert.Empty(over);
    }

    [GeneratedRegex("<section class=\"load\"><h2>Firing ")]
    private static partial Regex List();

    [GeneratedRegex("<a href=\"[^\"]*/v1/schedules/[^\"]*/fit[^\"]*\">its sheet</a>")]
    private static partial Regex Sheet();

    [GeneratedRegex("<strong class=\"cones\">")]
    private static partial Regex Cones();

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex Page();
}
