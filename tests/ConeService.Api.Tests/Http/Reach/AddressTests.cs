using ConeService.Api.Http.Reach;
using ConeService.Api.Operation;
using ConeService.Api.Tests.Support;
using Microsoft.Extensions.Options;

namespace ConeService.Api.Tests.Http.Reach;

/// <summary>Addresses work for the caller, behind a proxy that adds a path prefix too.</summary>
public class AddressTests
{
    // A proxy may hand the prefix on, or strip it: /pottery/v1 or /v1. One service is asked in all three ways: it is dear to start.
    [Fact]
    public async Task Behind_a_prefix_every_link_has_it()
    {
        using var host = Behind("https://studio.example/pottery/");
        foreach (var handedOn in new[] { "", "/pottery", "/POTTERY" }) await EveryLinkHasThePrefix(host, handedOn);
    }

    // A studio that is reached by more than one host says the path alone.
    [Fact]
    public async Task A_path_alone_stands_before_every_link_and_the_host_is_the_one_asked()
    {
        using var host = new OwnHost([("ConeService:PathBase", "/pottery")]);
        foreach (var handedOn in new[] { "", "/pottery" })
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, handedOn + "/v1/cones/0");
            request.Headers.Host = "inner.example";
            using var refused = await host.Client.SendAsync(request, Support.Api.Cancel);
            var problem = await Support.Api.Read(refused, 400);
            Assert.Equal("http://inner.example/pottery/problems/cone-zero", problem.GetProperty("type").GetString());
            Assert.Contains("</pottery/v1>; rel=\"index\"", Assert.Single(refused.Headers.GetValues("Link")), StringComparison.Ordinal);
        }
    }

    // Routing by the prefix once came before the suffix was taken off, so that /v1/cones/06.json asked for a cone “06.json”.
    [Theory]
    [InlineData("/v1/cones/06.json", "\"cone\":\"06\"")]
    [InlineData("/v1/processes/bisque.html", "<h1>")]
    [InlineData("/v1/cones/6/end-point.txt?rate=60C/h&unit=C", "1222")]
    [InlineData("/oembed?url=/pottery/cards/cone-6", "/pottery/cards/cone-6")]
    [InlineData("/oembed?url=http://inner.example/pottery/cards/cone-6", "/pottery/cards/cone-6")]
    [InlineData("/v1/tables/terms.html", "href=\"/pottery/v1/charts\"")]
    public async Task What_works_without_a_path_works_with_one(string url, string holds)
    {
        using var host = new OwnHost([("ConeService:PathBase", "/pottery")]);
        foreach (var handedOn in new[] { "", "/pottery" })
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, handedOn + url);
            request.Headers.Host = "inner.example";
            using var answer = await host.Client.SendAsync(request, Support.Api.Cancel);
            Assert.Equal((url, 200), (url, (int)answer.StatusCode));
            Assert.Contains(holds, await answer.Content.ReadAsStringAsync(Support.Api.Cancel), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("studio")]
    [InlineData("//studio")]
    [InlineData("/a?b")]
    [InlineData("https://studio.example/a")]
    public void A_path_that_is_none_stops_the_start(string path) => Assert.Contains(
        $"“{path}”",
        Assert.Throws<InvalidSettingException>(
            () => new ServiceAddress(Options.Create(new AddressSettings { PathBase = path }))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void A_path_that_the_address_contradicts_stops_the_start() => Assert.Contains(
        "One of them is enough",
        Assert.Throws<InvalidSettingException>(() => new ServiceAddress(
            Options.Create(new AddressSettings { PathBase = "/a", PublicBase = "https://studio.example/b" }))).Message,
        StringComparison.Ordinal);

    [Fact]
    public async Task Without_a_configured_address_the_request_says_where_the_service_is()
    {
        using var host = new OwnHost();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/cones/0");
        request.Headers.Host = "cones.example:8443";
        using var response = await host.Client.SendAsync(request, Support.Api.Cancel);
        Assert.Equal(
            "http://cones.example:8443/problems/cone-zero",
            (await Support.Api.Read(response, 400)).GetProperty("type").GetString());
    }

    [Theory]
    [InlineData("studio.example")]
    [InlineData("ftp://studio.example/")]
    [InlineData("https://studio.example/?a=b")]
    public void An_address_that_is_none_stops_the_start(string address) => Assert.Contains(
        "PublicBase",
        Assert.Throws<InvalidSettingException>(
            () => new ServiceAddress(Options.Create(new AddressSettings { PublicBase = address }))).Message,
        StringComparison.Ordinal);

    private static async Task EveryLinkHasThePrefix(OwnHost host, string handedOn)
    {
        using var refused = await host.Client.GetAsync(new Uri(handedOn + "/v1/cones/0", UriKind.Relative), Support.Api.Cancel);
        var problem = await Support.Api.Read(refused, 400);
        Assert.Equal("https://studio.example/pottery/problems/cone-zero", problem.GetProperty("type").GetString());
        foreach (var page in new[] { "/", "/problems", "/problems/cone-zero", "/v1.html", "/v1/charts.html", "/v1/cones/0.html" })
        {
            var html = await host.Text(handedOn + page);
            var links = html.Split("href=\"").Skip(1).Select(l => l[..l.IndexOf('"', StringComparison.Ordinal)]).ToList();
            Assert.NotEmpty(links);
            var own = links.Where(l => !l.StartsWith("https://", StringComparison.Ordinal));
            Assert.All(own, l => Assert.StartsWith("/pottery/", l, StringComparison.Ordinal));
        }

        // A kept answer and a computed one.
        foreach (var url in new[] { "/v1/processes/salt", "/v1/colours?colorant=copper&percent=0.5&cone=10&kiln=electric" })
        {
            var json = await host.Text(handedOn + url);
            Assert.Contains("\"href\":\"/pottery/v1/cautions/", json, StringComparison.Ordinal);
            Assert.DoesNotContain("\"href\":\"/v1/", json, StringComparison.Ordinal);
        }

        Assert.Contains("Probably /pottery/v1/charts.", await host.Text(handedOn + "/v1/chart"), StringComparison.Ordinal);
        using var index = await host.Client.GetAsync(new Uri(handedOn + "/v1", UriKind.Relative), Support.Api.Cancel);
        var link = Assert.Single(index.Headers.GetValues("Link"));
        Assert.Contains("</pottery/openapi/v1.json>; rel=\"service-desc\"", link, StringComparison.Ordinal);
        var items = (await Support.Api.Read(index, 200)).GetProperty("items").EnumerateArray();
        Assert.All(items, i => Assert.StartsWith("/pottery/", i.GetProperty("href").GetString(), StringComparison.Ordinal));
    }

    private static OwnHost Behind(string address) => new([("ConeService:PublicBase", address)]);
}
