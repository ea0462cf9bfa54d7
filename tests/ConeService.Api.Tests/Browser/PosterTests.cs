using System.Globalization;
using System.Text.RegularExpressions;
using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace ConeService.Api.Tests.Browser;

/// <summary>Posters as they come out of a printer: on as many sheets as they should, of the paper that was asked for, and nothing is
/// cut off.</summary>
public sealed partial class PosterTests(Support.Api api, Chromium chromium) : IClassFixture<Chromium>
{
    // px are 1/96 in (CSS Values 4). What reaches beyond a sheet, in either direction, and the smallest letters.
    private const string Beyond = """
        (height => {
          const wrong = [];
          for (const sheet of document.querySelectorAll('.sheet')) {
            const own = sheet.getBoundingClientRect().height;
            if (own > height) wrong.push(`higher than the paper: ${own} of ${height}`);
            for (const e of sheet.querySelectorAll('*')) {
              if (e.getBoundingClientRect().right > innerWidth + 1) wrong.push('wider than the paper: ' + e.textContent.slice(0, 40));
              const size = parseFloat(getComputedStyle(e).fontSize);
              if (e.children.length === 0 && e.textContent.trim() && size < 8) wrong.push(`letters of ${size} px`);
            }
          }
          for (const image of document.images) if (!image.complete || image.naturalWidth === 0) wrong.push('no image');
          return [...new Set(wrong)];
        })
        """;

    // ISO 216 and ANSI Y14.1, mm.
    private static readonly (string Name, double Width, double Height)[] Papers =
        [("a4", 210, 297), ("letter", 215.9, 279.4), ("a3", 297, 420)];

    [Theory]
    [InlineData("chart", 1)]
    [InlineData("cautions", 2)]
    [InlineData("before-you-load", 1)]
    [InlineData("cones", 2)]
    [InlineData("process-salt", 1)]
    public async Task A_poster_prints_on_its_sheets(string poster, int sheets)
    {
        foreach (var (name, width, height) in Papers)
        {
            var pdf = System.Text.Encoding.Latin1.GetString(await chromium.Pdf(Address($"/posters/{poster}?paper={name}")));
            Assert.Equal(sheets, Page().Count(pdf));
            // Points are 1/72 in.
            var box = MediaBox().Match(pdf);
            Assert.Equal(width / 25.4 * 72, Number(box.Groups[1]), 0.6);
            Assert.Equal(height / 25.4 * 72, Number(box.Groups[2]), 0.6);
        }
    }

    [Fact]
    public async Task Nothing_on_any_poster_is_cut_off()
    {
        var wrong = new List<string>();
        var processes = (await api.Json("/v1/processes")).GetProperty("items").EnumerateArray()
            .Select(p => "process-" + p.GetProperty("id"));
        await chromium.Inspect(Address("/posters/chart"), async page =>
        {
            await page.EmulateMediaTypeAsync(MediaType.Print);
            foreach (var (name, width, height) in Papers)
            {
                await page.SetViewportAsync(new ViewPortOptions { Width = Pixels(width), Height = Pixels(height) });
                foreach (var poster in processes.Concat(["chart", "cautions", "before-you-load", "cones"]))
                {
                    await page.GoToAsync(Address($"/posters/{poster}?paper={name}"), WaitUntilNavigation.Load);
                    var found = await page.EvaluateExpressionAsync<string[]>($"({Beyond})({Pixels(height)})");
                    wrong.AddRange(found.Select(f => $"{poster} on {name}: {f}"));
                }
            }

            return 0;
        });
        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("chart")]
    [InlineData("cautions")]
    [InlineData("before-you-load")]
    [InlineData("cones")]
    [InlineData("process-raku-western")]
    public async Task Axe_finds_nothing_and_nothing_scrolls_sideways(string poster) =>
        Assert.Empty(await Looks.Faults(chromium, Address("/posters/" + poster)));

    // Within the margins, 12 mm on each side.
    private static int Pixels(double millimetres) => (int)((millimetres - 24) / 25.4 * 96);

    private static double Number(Capture text) => double.Parse(text.Value, CultureInfo.InvariantCulture);

    private string Address(string path) => new Uri(api.Client.BaseAddress!, path).ToString();

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex Page();

    [GeneratedRegex(@"/MediaBox\s*\[0 0 ([0-9.]+) ([0-9.]+)\]")]
    private static partial Regex MediaBox();
}
