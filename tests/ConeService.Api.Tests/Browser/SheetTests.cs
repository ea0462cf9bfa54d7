using System.Text.RegularExpressions;
using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace ConeService.Api.Tests.Browser;

/// <summary>The sheet of a fitted schedule as it hangs on a door, on a phone and before a screen reader.</summary>
public sealed partial class SheetTests(Support.Api api, Chromium chromium) : IClassFixture<Chromium>, IDisposable
{
    private const string Electric = """ "kiln":{"id":"Otto","heat":"electric","volumeLitres":150,"kilowatts":12},""";

    // One template of each process: what a page says belongs to the process.
    private static readonly string[] Processes =
    [
        "bisque-careful", "candle", "crystalline", "decal", "gas-reduction", "lustre", "mid-range-glaze", "pit", "raku-western", "saggar",
        "salt", "single-fire", "soda", "wood-tunnel",
    ];

    private static readonly (int Width, string Scheme, MediaType? Media)[] Looks =
    [
        (320, "light", null), (320, "dark", null), (768, "light", null), (768, "dark", null), (1280, "light", null), (1280, "dark", null),
        (794, "light", MediaType.Print),
    ];

    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("cone-sheets-");

    public static TheoryData<string> EachProcess => [.. Processes];

    public void Dispose() => directory.Delete(recursive: true);

    // The first page is what is followed and signed, the second what stands behind it: each begins on a page of its own, so that two pages
    // in all are one and one.
    [Theory]
    [InlineData("")]
    [InlineData(Electric)]
    public async Task Every_sheet_is_one_page_to_follow_and_one_behind_it(string kiln)
    {
        var wrong = new List<string>();
        foreach (var template in (await api.Json("/v1/schedules")).GetProperty("items").EnumerateArray())
        {
            var id = template.GetProperty("id").GetString()!;
            var pdf = System.Text.Encoding.Latin1.GetString(await chromium.Pdf(await Sheet(id, kiln)));
            if (Page().Count(pdf) != 2) wrong.Add($"{id}: {Page().Count(pdf)} pages");
        }

        Assert.Empty(wrong);
    }

    // WCAG 2.2, levels A and AA, and the good practice that axe-core knows beside them.
    [Theory]
    [MemberData(nameof(EachProcess))]
    public async Task Axe_finds_nothing_and_nothing_scrolls_sideways(string schedule)
    {
        var axe = Chromium.Tool("axe-core/axe.min.js");
        var found = await chromium.Inspect(await Sheet(schedule, ""), async page =>
        {
            var all = new List<string>();
            foreach (var (width, scheme, media) in Looks)
            {
                await page.SetViewportAsync(new ViewPortOptions { Width = width, Height = 900 });
                await page.EmulateMediaTypeAsync(media ?? MediaType.Screen);
                await page.EmulateMediaFeaturesAsync([new() { MediaFeature = MediaFeature.PrefersColorScheme, Value = scheme }]);
                await page.EvaluateExpressionAsync(axe);
                var violations = await page.EvaluateExpressionAsync<string[]>(
                    "axe.run().then(r => r.violations.map(v => v.id + ' ' + v.nodes[0].html))");
                all.AddRange(violations.Select(v => $"{width} {scheme} {media}: {v}"));
                var over = await page.EvaluateExpressionAsync<int>("document.documentElement.scrollWidth - innerWidth");
                if (over > 0) all.Add($"{width} {scheme} {media}: {over} px too wide");
            }

            return all;
        });
        Assert.Empty(found);
    }

    // Else silence would prove nothing.
    [Fact]
    public async Task Axe_does_find_what_is_wrong()
    {
        var axe = Chromium.Tool("axe-core/axe.min.js");
        var found = await chromium.Inspect("data:text/html,<img src=x><p style=color:%23eee>pale</p>", async page =>
        {
            await page.EvaluateExpressionAsync(axe);
            return await page.EvaluateExpressionAsync<string[]>("axe.run().then(r => r.violations.map(v => v.id))");
        });
        Assert.Superset(new HashSet<string> { "image-alt", "color-contrast", "html-has-lang" }, found.ToHashSet());
    }

    private async Task<string> Sheet(string schedule, string kiln)
    {
        var template = await api.Json($"/v1/schedules/{schedule}");
        var cone = template.GetProperty("endCone") is { ValueKind: System.Text.Json.JsonValueKind.String } end
            ? $"\"cone\":\"{end.GetString()}\"," : "";
        var body = $$"""{ {{cone}}{{kiln}}"units":"C","start":"2026-12-04T18:00:00","timeZone":"Europe/Berlin" }""";
        using var response = await api.Post($"/v1/schedules/{schedule}/fit", body, accept: "text/html");
        Assert.Equal(200, (int)response.StatusCode);
        var file = Path.Combine(directory.FullName, $"{schedule}.html");
        await File.WriteAllTextAsync(file, await response.Content.ReadAsStringAsync(Support.Api.Cancel), Support.Api.Cancel);
        return new Uri(file).ToString();
    }

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex Page();
}
