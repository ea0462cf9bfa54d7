namespace ConeService.Api.Tests.Http.Reach;

/// <summary>What a browser may do with an answer: CSP level 3, and the headers that OWASP's cheat sheet for REST names.</summary>
public class PagePolicyTests(Support.Api api)
{
    [Theory]
    [InlineData("/", "'none'")]
    [InlineData("/v1/cones/6.html", "'none'")]
    [InlineData("/v1/cones/6", "'none'")]
    [InlineData("/problems/cone-zero", "'none'")]
    [InlineData("/v1/cones/0", "'none'")]
    [InlineData("/docs/index.html", "'none'")]
    [InlineData("/cards/cone-6", "* file:")]
    // A card that is refused stands in the same frame.
    [InlineData("/cards/cone-0", "* file:")]
    public async Task Only_cards_may_be_framed(string url, string ancestors)
    {
        using var response = await api.Get(url);
        var policy = Assert.Single(response.Headers.GetValues("Content-Security-Policy"));
        Assert.EndsWith($"frame-ancestors {ancestors}", policy, StringComparison.Ordinal);
        Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("no-referrer", Assert.Single(response.Headers.GetValues("Referrer-Policy")));
    }

    [Theory]
    [InlineData("/v1/cones/6.html", false)]
    [InlineData("/cards/cone-6", false)]
    [InlineData("/docs/index.html", true)]
    public async Task Only_the_page_that_shows_the_document_runs_scripts_and_only_those_of_this_service(string url, bool runs)
    {
        using var response = await api.Get(url);
        var policy = Assert.Single(response.Headers.GetValues("Content-Security-Policy"));
        Assert.Equal(runs, policy.Contains("script-src 'self';", StringComparison.Ordinal));
        Assert.DoesNotContain("unsafe-eval", policy, StringComparison.Ordinal);
    }
}
