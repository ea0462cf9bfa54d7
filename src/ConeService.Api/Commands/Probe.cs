namespace ConeService.Api.Commands;

/// <summary>
/// <c>probe [url]</c>: exit code 0 when the service answers ready; the container's health check, as its image has no curl.
/// </summary>
internal static class Probe
{
    private const string Ready = "/health/ready";

    /// <summary>
    /// Where the service beside it listens by the same settings of the environment: <c>ASPNETCORE_URLS</c>, or
    /// <c>ASPNETCORE_HTTP_PORTS</c>; else port 8080.
    /// </summary>
    public static string Own()
    {
        var urls = Environment.GetEnvironmentVariable("ASPNETCORE_URLS")?.Split(';', StringSplitOptions.RemoveEmptyEntries) ?? [];
        var first = urls.FirstOrDefault(u => u.StartsWith("http://", StringComparison.OrdinalIgnoreCase));
        var port = first is { } url
            ? url.TrimEnd('/').Split(':')[^1]
            : Environment.GetEnvironmentVariable("ASPNETCORE_HTTP_PORTS")?.Split(';')[0];
        return $"http://127.0.0.1:{(int.TryParse(port, out var number) ? number : 8080)}{Ready}";
    }

    public static async Task<int> RunAsync(string[] args)
    {
        var url = args.FirstOrDefault() ?? Own();
        using var client = new HttpClient { Timeout = TimeSpan.FromSeconds(3) };
        try
        {
            using var response = await client.GetAsync(new Uri(url));
            return response.IsSuccessStatusCode ? 0 : 1;
        }
        catch (Exception failure) when (failure is HttpRequestException or TaskCanceledException)
        {
            await Console.Error.WriteLineAsync($"{url} does not answer: {failure.Message}");
            return 1;
        }
    }
}
