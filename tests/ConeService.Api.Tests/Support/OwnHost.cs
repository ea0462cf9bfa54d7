using ConeService.Api.Tests.Contract;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.Logging;

namespace ConeService.Api.Tests.Support;

/// <summary>The service with a package or overlays of a test's own, in this process.</summary>
internal sealed class OwnHost : IDisposable
{
    private readonly WebApplicationFactory<Program> factory;

    public OwnHost(string? package = null, params string[] overlays)
        : this([
            .. package is null ? [] : new[] { ("ConeService:Data:Path", package) },
            .. overlays.Index().Select(o => ($"ConeService:Data:Overlays:{o.Index}", o.Item))])
    {
    }

    public OwnHost(IEnumerable<(string Name, string Value)> settings)
    {
        factory = new WebApplicationFactory<Program>().WithWebHostBuilder(b =>
        {
            foreach (var (name, value) in settings) b.UseSetting(name, value);
            b.ConfigureLogging(l => l.AddProvider(Log));
        });
        Client = factory.CreateDefaultClient(new ContractHandler());
    }

    public HttpClient Client { get; }

    public LogWatch Log { get; } = new();

    /// <summary>Asks in a language.</summary>
    public async Task<HttpResponseMessage> Ask(string url, string? language, string? body = null)
    {
        using var request = new HttpRequestMessage(body is null ? HttpMethod.Get : HttpMethod.Post, url);
        if (body is not null) request.Content = new StringContent(body, System.Text.Encoding.UTF8, "application/json");
        if (language is not null) request.Headers.TryAddWithoutValidation("Accept-Language", language);
        return await Client.SendAsync(request, Api.Cancel);
    }

    /// <summary>A body as text.</summary>
    public async Task<string> Text(string url, string? language = null)
    {
        using var response = await Ask(url, language);
        return await response.Content.ReadAsStringAsync(Api.Cancel);
    }

    public void Dispose()
    {
        Client.Dispose();
        factory.Dispose();
        Log.Dispose();
    }
}
