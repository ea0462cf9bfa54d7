using System.Net;
using System.Text.Json;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

/// <summary>Every refusal is a problem document, for browsers as a page (RFC 9457, and the contract).</summary>
public class ProblemPageTests(Support.Api api)
{
    private const string Browser = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";

    [Theory]
    [InlineData("/v1/cones/0/end-point?rate=60&chart=smal", 400)]
    [InlineData("/v1/charts/witness", 404)]
    [InlineData("/nothing", 404)]
    [InlineData("/v1/cones/6.pdf", 406)]
    [InlineData("/v1/cones/6?rat=1", 400)]
    public async Task A_browser_gets_what_the_problem_says_as_a_page(string url, int status)
    {
        using var json = await api.Get(url);
        var problem = await Support.Api.Read(json, status);
        using var response = await api.Get(url, Browser);
        Assert.Equal(status, (int)response.StatusCode);
        Assert.Equal("text/html", response.Content.Headers.ContentType?.MediaType);
        Assert.Equal("no-store", response.Headers.CacheControl?.ToString());
        Assert.Contains("Accept", response.Headers.Vary);
        var html = WebUtility.HtmlDecode(await response.Content.ReadAsStringAsync(Support.Api.Cancel));
        Assert.Contains(problem.GetProperty("title").GetString()!, html, StringComparison.Ordinal);
        Assert.Contains(problem.GetProperty("detail").GetString()!, html, StringComparison.Ordinal);
        Assert.Contains($"href=\"{problem.GetProperty("type").GetString()}\"", html, StringComparison.Ordinal);
        foreach (var finding in problem.GetProperty("errors").EnumerateArray())
        {
            foreach (var member in finding.EnumerateObject().Where(m => m.Value.ValueKind == JsonValueKind.String))
                Assert.Contains(member.Value.GetString()!, html, StringComparison.Ordinal);
            Assert.All(finding.GetProperty("allowed").Strings(), a => Assert.Contains(a, html, StringComparison.Ordinal));
        }
    }

    // The suffix wins, for refusals too; whoever names no preference is a program.
    [Theory]
    [InlineData("/v1/cones/0.html", null, "text/html")]
    [InlineData("/v1/cones/0.json", Browser, "application/problem+json")]
    [InlineData("/v1/cones/0", null, "application/problem+json")]
    [InlineData("/v1/cones/0", "*/*", "application/problem+json")]
    [InlineData("/v1/cones/0", "application/problem+json, text/html;q=0.9", "application/problem+json")]
    [InlineData("/v1/cones/0", "image/png", "application/problem+json")]
    public async Task Others_get_the_document(string url, string? accept, string expected)
    {
        using var response = await api.Get(url, accept);
        Assert.Equal(400, (int)response.StatusCode);
        Assert.Equal(expected, response.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task A_type_leads_to_its_page()
    {
        using var response = await api.Get("/v1/cones/0");
        var type = new Uri((await Support.Api.Read(response, 400)).GetProperty("type").GetString()!);
        Assert.True(type.IsAbsoluteUri);
        using var page = await api.Client.GetAsync(type, Support.Api.Cancel);
        Assert.Equal(200, (int)page.StatusCode);
        Assert.Equal("text/html", page.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task A_lost_caller_is_told_where_the_document_is()
    {
        using var response = await api.Get("/v1/cones/0");
        var link = Assert.Single(response.Headers.GetValues("Link"));
        Assert.Contains("</openapi/v1.json>; rel=\"service-desc\"", link, StringComparison.Ordinal);
    }
}
