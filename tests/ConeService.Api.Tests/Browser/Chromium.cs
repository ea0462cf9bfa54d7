using PuppeteerSharp;

namespace ConeService.Api.Tests.Browser;

/// <summary>Headless Chromium, started once for all page tests; each look is a page of its own, without a cache.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    private static readonly string[] Always =
    [
        "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic", "--no-first-run", "--hide-scrollbars",
        "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    // On a busy machine, ms.
    private const int Patience = 90_000;

    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
        if (Find() is { } program)
            browser = await Puppeteer.LaunchAsync(new() { ExecutablePath = program, Headless = true, Args = Always, Timeout = Patience });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
    }

    /// <summary>The document as it stands after loading, as markup.</summary>
    /// <param name="url">Its address.</param>
    /// <param name="selector">What a script of the page must have made first.</param>
    public async Task<string> Dom(string url, string selector = "body")
    {
        await using var page = await Open(url);
        await page.WaitForSelectorAsync(selector);
        return await page.GetContentAsync();
    }

    /// <summary>What the window shows.</summary>
    internal async Task<Picture> Screenshot(string url, int width = 800, int height = 600)
    {
        await using var page = await Open(url, width, height);
        return new(await page.ScreenshotDataAsync(), height);
    }

    /// <summary>The page as it prints, a PDF.</summary>
    public async Task<byte[]> Pdf(string url)
    {
        await using var page = await Open(url);
        return await page.PdfDataAsync(new PdfOptions { PreferCSSPageSize = true });
    }

    /// <summary>What a page tells of itself, after whatever is done with it.</summary>
    public async Task<T> Inspect<T>(string url, Func<IPage, Task<T>> look)
    {
        await using var page = await Open(url);
        return await look(page);
    }

    /// <summary>A file of the node tools of tests/contract; where they are not installed a test is skipped as without a browser.</summary>
    public static string Tool(string path)
    {
        var file = Path.Combine(Support.Repository.Root, "tests", "contract", "node_modules", path);
        const string Missing = "The node tools are not installed: npm ci --prefix tests/contract.";
        if (!File.Exists(file) && Environment.GetEnvironmentVariable("CONESERVICE_REQUIRE_BROWSER") == "1") Assert.Fail(Missing);
        Assert.SkipUnless(File.Exists(file), Missing);
        return File.ReadAllText(file);
    }

    private async Task<IPage> Open(string url, int width = 800, int height = 600)
    {
        var page = await Require().NewPageAsync();
        await page.SetCacheEnabledAsync(false);
        await page.SetViewportAsync(new ViewPortOptions { Width = width, Height = height });
        await page.GoToAsync(url, Patience, [WaitUntilNavigation.Load, WaitUntilNavigation.Networkidle0]);
        return page;
    }

    // Where there is no browser a test is skipped, or fails when CONESERVICE_REQUIRE_BROWSER is 1.
    private IBrowser Require()
    {
        const string Missing = "There is no Chromium on the PATH; on Debian: apt-get install chromium.";
        if (browser is null && Environment.GetEnvironmentVariable("CONESERVICE_REQUIRE_BROWSER") == "1") Assert.Fail(Missing);
        Assert.SkipWhen(browser is null, Missing);
        return browser!;
    }

    private static string? Find() => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .SelectMany(directory => Names.Select(name => Path.Combine(directory, name)))
        .FirstOrDefault(File.Exists);
}
