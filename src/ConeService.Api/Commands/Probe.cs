namespace ConeService.Api.Commands;

/// <summary>
/// <c>probe [url]</c>: exit code 0 when the service answers ready; the container's health check, as its image has no curl.
/// </summary>
internal static class Probe
{
    public static async Task<int> RunAsync(string[] args)
    {
        var url = args.FirstOrDefault() ?? "http://127.0.0.1:8080/health/ready";
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
