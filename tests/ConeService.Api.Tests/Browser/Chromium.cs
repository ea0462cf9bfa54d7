using System.Diagnostics;

namespace ConeService.Api.Tests.Browser;

/// <summary>Headless Chromium, started anew for each look, with an empty profile of its own.</summary>
internal sealed class Chromium
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    private static readonly string[] Always =
    [
        "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic", "--no-first-run", "--hide-scrollbars",
        "--disable-background-networking", "--disable-component-update", "--disable-sync", "--virtual-time-budget=8000",
    ];

    // A headless window starts lower than asked for, by the height of the bars it does not have. On a busy machine the
    // picture may be taken before a frame has grown with its window, and its lower part is blank: that part is cut off.
    private const int Bars = 200;

    private readonly string program;

    private Chromium(string program) => this.program = program;

    /// <summary>The browser of this machine. Where there is none the test is skipped, or fails when CONESERVICE_REQUIRE_BROWSER is 1.</summary>
    public static Chromium Require()
    {
        if (Find() is { } program) return new(program);
        const string Missing = "There is no Chromium on the PATH; on Debian: apt-get install chromium.";
        if (Environment.GetEnvironmentVariable("CONESERVICE_REQUIRE_BROWSER") == "1") Assert.Fail(Missing);
        Assert.Skip(Missing);
        return null!;
    }

    /// <summary>The document as it stands after loading, as markup.</summary>
    public async Task<string> Dom(string url) => (await Run(url, "--dump-dom")).Output;

    /// <summary>What the window shows.</summary>
    public async Task<Picture> Screenshot(string url, int width = 800, int height = 600) =>
        new(await Made(url, "picture.png", "--screenshot=", $"--window-size={width},{height + Bars}"), height);

    /// <summary>The page as it prints, a PDF.</summary>
    public Task<byte[]> Pdf(string url) => Made(url, "sheet.pdf", "--print-to-pdf=", "--no-pdf-header-footer");

    private async Task<byte[]> Made(string url, string name, string option, string how)
    {
        var directory = Directory.CreateTempSubdirectory("cone-browser-");
        try
        {
            var file = Path.Combine(directory.FullName, name);
            var (_, error) = await Run(url, option + file, how);
            Assert.True(File.Exists(file), $"Chromium made no {name} of {url}: {error}");
            return await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);
        }
        finally
        {
            directory.Delete(recursive: true);
        }
    }

    private async Task<(string Output, string Error)> Run(string url, params string[] options)
    {
        var profile = Directory.CreateTempSubdirectory("cone-profile-");
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        limit.CancelAfter(TimeSpan.FromSeconds(90));
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in (string[])[.. Always, $"--user-data-dir={profile.FullName}", .. options, url]) start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        try
        {
            var output = process.StandardOutput.ReadToEndAsync(limit.Token);
            var error = process.StandardError.ReadToEndAsync(limit.Token);
            await process.WaitForExitAsync(limit.Token);
            Assert.True(process.ExitCode == 0, $"Chromium ended with {process.ExitCode} at {url}: {await error}");
            return (await output, await error);
        }
        finally
        {
            if (!process.HasExited) process.Kill(entireProcessTree: true);
            TryDelete(profile);
        }
    }

    // A helper process of the browser may still write while it ends; a leftover in the temporary directory does no harm.
    private static void TryDelete(DirectoryInfo profile)
    {
        try
        {
            profile.Delete(recursive: true);
        }
        catch (IOException)
        {
        }
    }

    private static string? Find() => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .SelectMany(directory => Names.Select(name => Path.Combine(directory, name)))
        .FirstOrDefault(File.Exists);
}
