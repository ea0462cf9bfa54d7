using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace ConeService.Api.Tests.Browser;

/// <summary>
/// A page as it is seen on a phone, a tablet and a screen, light, dark, printed and in colours that the reader forced: WCAG 2.2, levels A
/// and AA, and the good practice that axe-core knows beside them. CONESERVICE_ALL_LOOKS=1 tries every width with every look.
/// </summary>
internal static class Looks
{
    private const string Axe =
        "axe.run({iframes:false}).then(r => r.violations.map(v => v.id + ': ' + v.nodes.map(n => n.target.join(' ')).join(' | ')))";

    private static readonly object ForcedColours = new { features = new[] { new { name = "forced-colors", value = "active" } } };

    private static readonly int[] Widths = [320, 768, 1280];

    private static readonly (int Width, Kind Kind)[] Sample =
        [(320, Kind.Light), (768, Kind.Dark), (1280, Kind.Forced), (768, Kind.Print)];

    private enum Kind
    {
        Light,
        Dark,
        Print,
        Forced,
    }

    /// <summary>How many looks each page is tried in.</summary>
    public static int Count => Tried.Length;

    private static (int Width, Kind Kind)[] Tried =>
        Environment.GetEnvironmentVariable("CONESERVICE_ALL_LOOKS") == "1"
            ? [.. Widths.SelectMany(w => Enum.GetValues<Kind>().Select(k => (w, k)))]
            : Sample;

    /// <summary>What is wrong with a page in any look: what axe finds, and what scrolls sideways.</summary>
    public static Task<List<string>> Faults(Chromium chromium, string url) => chromium.Inspect(url, async page =>
    {
        var axe = Chromium.Tool("axe-core/axe.min.js");
        var all = new List<string>();
        foreach (var (width, kind) in Tried)
        {
            await page.SetViewportAsync(new ViewPortOptions { Width = width, Height = 900 });
            await page.EmulateMediaTypeAsync(kind == Kind.Print ? MediaType.Print : MediaType.Screen);
            var scheme = kind == Kind.Dark ? "dark" : "light";
            await page.EmulateMediaFeaturesAsync([new() { MediaFeature = MediaFeature.PrefersColorScheme, Value = scheme }]);
            if (kind == Kind.Forced) await page.Client.SendAsync("Emulation.setEmulatedMedia", ForcedColours);
            await page.EvaluateExpressionAsync(axe + ";0");
            var found = await page.EvaluateExpressionAsync<string[]>(Axe);
            all.AddRange(found.Select(f => $"{width} {kind}: {f}"));
            var wide = await page.EvaluateExpressionAsync<int>("document.documentElement.scrollWidth");
            if (wide > width) all.Add($"{width} {kind}: {wide} wide");
        }

        return all;
    });
}
