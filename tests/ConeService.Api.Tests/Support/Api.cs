using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using ConeService.Api.Tests.Contract;
using ConeService.Api.Tests.Support;
using Microsoft.AspNetCore.Mvc.Testing;

[assembly: AssemblyFixture(typeof(Api))]

namespace ConeService.Api.Tests.Support;

/// <summary>The service with its embedded data, started once for all tests.</summary>
public sealed class Api : IDisposable
{
    // Two builds and a browser may have the machine while a kiln is calibrated without optimization; when a computation is given up is
    // tested where it is the question (ComputationTests).
    private readonly WebApplicationFactory<Program> factory = new WebApplicationFactory<Program>()
        .WithWebHostBuilder(b => b.UseSetting("ConeService:Computations:SecondsAtMost", "120"));

    public Api()
    {
        // A real socket: limits, HEAD and header rules are Kestrel's own, not an imitation's.
        factory.UseKestrel(0);
        using var found = factory.CreateClient();
        // Whatever a test asks, the answer must be what the document says.
        Client = new(new ContractHandler { InnerHandler = new SocketsHttpHandler() }) { BaseAddress = found.BaseAddress };
    }

    public HttpClient Client { get; }

    public static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public Task<HttpResponseMessage> Get(string url, string? accept = null) => Send(HttpMethod.Get, url, accept: accept);

    public Task<HttpResponseMessage> Post(string url, string body, string contentType = "application/json", string? accept = null) =>
        Send(HttpMethod.Post, url, new StringContent(body, Encoding.UTF8, MediaTypeHeaderValue.Parse(contentType)), accept);

    public async Task<HttpResponseMessage> Send(
        HttpMethod method, string url, HttpContent? content = null, string? accept = null, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(method, url) { Content = content };
        if (accept is not null) request.Headers.TryAddWithoutValidation("Accept", accept);
        foreach (var (name, value) in headers) request.Headers.TryAddWithoutValidation(name, value);
        return await Client.SendAsync(request, Cancel);
    }

    /// <summary>A successful JSON answer.</summary>
    public async Task<JsonElement> Json(string url)
    {
        using var response = await Get(url);
        return await Read(response, 200);
    }

    /// <summary>A JSON body with the status expected.</summary>
    public static async Task<JsonElement> Read(HttpResponseMessage response, int status)
    {
        var text = await response.Content.ReadAsStringAsync(Cancel);
        Assert.True((int)response.StatusCode == status, $"{(int)response.StatusCode}: {text}");
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }

    public void Dispose()
    {
        Client.Dispose();
        factory.Dispose();
    }
}
