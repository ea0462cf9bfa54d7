using System.Net;
using ConeService.Api.Http.Reach;
using ConeService.Api.Operation;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace ConeService.Api.Tests.Http.Reach;

/// <summary>Forwarded headers are believed from the proxies that were named, and from nobody else.</summary>
public class ProxyTests
{
    [Theory]
    [InlineData("127.0.0.1", "https://studio.example/pots")]
    [InlineData("127.0.0.0/8", "https://studio.example/pots")]
    [InlineData("10.0.0.7", "http://inner.example")]
    public async Task A_named_proxy_says_where_the_caller_is(string proxy, string expected)
    {
        var settings = new AddressSettings();
        settings.Proxies.Add(proxy);
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        await using var app = builder.Build();
        app.Urls.Add("http://127.0.0.1:0");
        app.UseForwardedHeaders(ProxySettings.Read(settings)!);
        app.MapGet("/", (HttpRequest r) => $"{r.Scheme}://{r.Host}{r.PathBase}");
        await app.StartAsync(Support.Api.Cancel);
        using var client = new HttpClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, app.Urls.First());
        request.Headers.Host = "inner.example";
        request.Headers.Add("X-Forwarded-For", "192.0.2.9");
        request.Headers.Add("X-Forwarded-Proto", "https");
        request.Headers.Add("X-Forwarded-Host", "studio.example");
        request.Headers.Add("X-Forwarded-Prefix", "/pots");
        using var response = await client.SendAsync(request, Support.Api.Cancel);
        Assert.Equal(expected, await response.Content.ReadAsStringAsync(Support.Api.Cancel));
    }

    [Fact]
    public void Where_none_is_named_no_header_is_read() => Assert.Null(ProxySettings.Read(new()));

    [Fact]
    public void A_proxy_that_is_no_address_stops_the_start()
    {
        var settings = new AddressSettings();
        settings.Proxies.Add(IPAddress.Loopback.ToString());
        settings.Proxies.Add("nginx");
        Assert.Equal(
            "ConeService:Proxies:1 is “nginx”, which is neither an address (10.0.0.7) nor a network (10.0.0.0/8).",
            Assert.Throws<InvalidSettingException>(() => ProxySettings.Read(settings)).Message);
    }
}
