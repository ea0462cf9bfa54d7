using ConeService.Api.Tests.Support;
using PuppeteerSharp;

namespace ConeService.Api.Tests.Browser;

/// <summary>Cards in a real browser: they fit where they are put, on a phone, in the dark and on paper.</summary>
public sealed class CardTests(Support.Api api, Chromium chromium) : IClassFixture<Chromium>
{
    // Width, height, and what the page reaches beyond its frame, px: [high, wide, told].
    private const string Measure = """
        [document.documentElement.scrollHeight, document.documentElement.scrollWidth,
         Number(document.querySelector('meta[name="cone-service:height"]')?.content ?? 0)]
        """;

    public static TheoryData<string> OneOfEach => [.. CardAddresses.OneOfEach];

    [Fact]
    public async Task Every_short_card_fits_and_every_full_one_is_no_higher_than_told()
    {
        var wrong = new List<string>();
        var cards = await CardAddresses.All(api);
        await chromium.Inspect(Address("/cards/cone-6"), async page =>
        {
            foreach (var card in cards)
            {
                var small = await Look(page, CardAddresses.With(card, "size=short"), 320, 360);
                if (small[0] > 360 || small[1] > 320) wrong.Add($"{card}, short: {small[1]} by {small[0]}");
                var full = await Look(page, "/cards/" + card, 640, 100);
                if (full[0] > full[2] || full[1] > 640) wrong.Add($"{card}: {full[1]} by {full[0]}, told {full[2]}");
            }

            return 0;
        });
        Assert.Empty(wrong);
    }

    [Theory]
    [MemberData(nameof(OneOfEach))]
    public async Task Axe_finds_nothing_and_nothing_scrolls_sideways(string card) =>
        Assert.Empty(await Looks.Faults(chromium, Address("/cards/" + card)));

    [Theory]
    [InlineData("/cards")]
    [InlineData("/cards?card=process/salt")]
    [InlineData("/cards/convert?cone=0")]
    [InlineData("/cards/none")]
    public async Task So_it_is_with_the_index_and_with_refusals(string url) => Assert.Empty(await Looks.Faults(chromium, Address(url)));

    // Without a mouse: into the field, a cone, Enter.
    [Fact]
    public async Task The_converter_works_by_the_keyboard_alone()
    {
        var answer = await chromium.Inspect(Address("/cards/convert?size=short&theme=dark"), async page =>
        {
            await page.Keyboard.PressAsync("Tab");
            await page.Keyboard.TypeAsync("06");
            var arrived = page.WaitForNavigationAsync();
            await page.Keyboard.PressAsync("Enter");
            await arrived;
            return page.Url + " " + await page.EvaluateExpressionAsync<string>("document.body.innerText");
        });
        Assert.Contains("cone=06", answer, StringComparison.Ordinal);
        // What was chosen of the look stays.
        Assert.Contains("size=short&theme=dark", answer, StringComparison.Ordinal);
        Assert.Contains("Cone 06 goes down at 998 °C", answer, StringComparison.Ordinal);
    }

    // DOMPurify with frames allowed, as a course system sets it for hosts that its administrator named.
    [Fact]
    public async Task The_lines_to_paste_live_through_dompurify()
    {
        var purify = Chromium.Tool("dompurify/dist/purify.min.js");
        var kept = await chromium.Inspect(Address("/cards?card=process/raku-western"), async page =>
        {
            await page.EvaluateExpressionAsync(purify + ";0");
            return await page.EvaluateExpressionAsync<string[]>("""
                [...document.querySelectorAll('textarea')].map(t =>
                  DOMPurify.sanitize(t.value, { ADD_TAGS: ['iframe'], FORBID_TAGS: ['script', 'style', 'form'], FORBID_ATTR: ['style'] }))
                """);
        });
        var frames = kept.Where(k => k.StartsWith("<iframe", StringComparison.Ordinal));
        Assert.Equal(3, frames.Count(k => k.Contains("raku\"", StringComparison.Ordinal)));
        Assert.Equal(6, kept.Count(k => k.StartsWith("<img", StringComparison.Ordinal) && k.Contains("alt=", StringComparison.Ordinal)));
        Assert.Single(kept, k => k.StartsWith("<a href=", StringComparison.Ordinal));
    }

    private async Task<int[]> Look(IPage page, string url, int width, int height)
    {
        await page.SetViewportAsync(new ViewPortOptions { Width = width, Height = height });
        await page.GoToAsync(Address(url), WaitUntilNavigation.Load);
        return await page.EvaluateExpressionAsync<int[]>(Measure);
    }

    private string Address(string path) => new Uri(api.Client.BaseAddress!, path).ToString();
}
