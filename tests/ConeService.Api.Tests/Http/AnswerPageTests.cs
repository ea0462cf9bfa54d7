namespace ConeService.Api.Tests.Http;

/// <summary>Lists and details are pages for who opens them in a browser.</summary>
public class AnswerPageTests(Support.Api api)
{
    private const string Browser = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";

    [Theory]
    [InlineData("/v1/clay-bodies", "<h1>Clay bodies</h1>", "<a href=\"/v1/clay-bodies/red-earthenware\">red-earthenware</a>")]
    [InlineData("/v1/sources/orton-2016", "</h1>", "orton-2016")]
    // Where a card shows the same, the card is the page.
    [InlineData("/v1/cones/6", "<h1>Cone 6</h1>", "Where it goes down, chart by chart")]
    [InlineData("/v1/cones/6/end-point?rate=60C/h", "Cone 6", "1222")]
    public async Task A_browser_gets_a_page_without_scripts(string url, params string[] parts)
    {
        using var response = await api.Get(url, Browser);
        Assert.Equal("text/html", response.Content.Headers.ContentType?.MediaType);
        Assert.Contains("Accept", response.Headers.Vary);
        var html = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.All(parts, p => Assert.Contains(p, html, StringComparison.Ordinal));
        Assert.DoesNotMatch("<script(?! type=.application/ld)", html);
    }

    // An address of this service can be followed, whatever the member is called.
    [Theory]
    [InlineData("/v1/cones/6/end-point?rate=60C/h", "<a href=\"/v1/equations/")]
    [InlineData("/v1/cones/6/end-point?rate=60C/h", "<a href=\"/v1/charts/witness-self-supporting/cells/6@60\">")]
    [InlineData("/v1/charts/witness-self-supporting", "<a href=\"/v1/tables/charts/witness-self-supporting\">")]
    public async Task Addresses_of_the_service_are_links(string url, string link)
    {
        using var response = await api.Get(url, Browser);
        var html = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Contains(link, html, StringComparison.Ordinal);
        Assert.DoesNotMatch("<td>/v1/[^<{]*</td>", html);
    }

    // Paper can't be scrolled: what does not fit beside each other is printed on its side, or row by row behind the names of its columns.
    [Theory]
    [InlineData("/v1/colours?colorant=copper", "class=\"wide rows\"", "data-h=\"")]
    [InlineData("/v1/clay-bodies", "class=\"wide dense\"", "@page{size:landscape}")]
    [InlineData("/v1/tables/end-points", "class=\"wide dense\"", "@page{size:landscape}")]
    [InlineData("/v1/charts/witness-self-supporting", "class=\"wide dense\"", ".wide{overflow:visible}")]
    public async Task A_wide_table_is_told_apart_for_paper(string url, params string[] parts)
    {
        using var response = await api.Get(url, Browser);
        var html = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.All(parts, p => Assert.Contains(p, html, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_page_has_a_tag_of_its_own_and_is_answered_304()
    {
        using var json = await api.Get("/v1/charts");
        using var page = await api.Get("/v1/charts", Browser);
        Assert.NotEqual(json.Headers.ETag, page.Headers.ETag);
        using var again = await api.Send(
            HttpMethod.Get, "/v1/charts", null, Browser, ("If-None-Match", page.Headers.ETag!.ToString()));
        Assert.Equal(304, (int)again.StatusCode);
    }

    [Fact]
    public async Task Text_of_an_answer_is_no_markup()
    {
        using var response = await api.Get("/v1/cones/%3Cb%3E/end-point", Browser);
        var html = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;", html, StringComparison.Ordinal);
    }
}
