namespace ConeService.Api.Tests.Http.Reach;

/// <summary>A page of another origin may ask everything, as the Fetch standard has it (4.8, CORS-preflight fetch).</summary>
public class CrossOriginTests(Support.Api api)
{
    private static readonly (string Name, string Value) Origin = ("Origin", "https://course.example");

    [Fact]
    public async Task A_page_reads_an_answer_and_its_headers()
    {
        using var get = await api.Send(HttpMethod.Get, "/v1/cones/6", null, null, Origin);
        Assert.Equal("*", Assert.Single(get.Headers.GetValues("Access-Control-Allow-Origin")));
        // Anyone may ask, so nobody's cookies count.
        Assert.False(get.Headers.Contains("Access-Control-Allow-Credentials"));
        var exposed = string.Join(",", get.Headers.GetValues("Access-Control-Expose-Headers")).Split(',');
        Assert.Superset(new HashSet<string> { "ETag", "Link", "Deprecation", "Sunset", "Retry-After" }, exposed.ToHashSet());
    }

    // A shared cache gives what it got by a request without an origin to a page, which then needs the header.
    [Theory]
    [InlineData("/v1/cones/6")]
    [InlineData("/v1/cones/0")]
    [InlineData("/v1/nothing")]
    [InlineData("/cards/cone-6")]
    [InlineData("/openapi/v1.json")]
    [InlineData("/health/live")]
    public async Task An_answer_says_so_to_who_names_no_origin_too(string url)
    {
        using var named = await api.Send(HttpMethod.Get, url, null, null, Origin);
        using var unnamed = await api.Get(url);
        foreach (var header in new[] { "Access-Control-Allow-Origin", "Access-Control-Expose-Headers" })
            Assert.Equal(Assert.Single(named.Headers.GetValues(header)), Assert.Single(unnamed.Headers.GetValues(header)));
        Assert.Equal("*", Assert.Single(unnamed.Headers.GetValues("Access-Control-Allow-Origin")));
        Assert.DoesNotContain("Origin", unnamed.Headers.Vary);
    }

    // Content-Type of JSON or CSV makes a POST one that a browser asks leave for; the leave is kept for a day.
    [Theory]
    [InlineData("/v1/conversions")]
    [InlineData("/v1/heat-work")]
    [InlineData("/v1/schedules/mid-range-glaze/fit")]
    public async Task A_page_gets_leave_to_post_for_a_day(string url)
    {
        using var preflight = await api.Send(
            HttpMethod.Options, url, null, null,
            Origin, ("Access-Control-Request-Method", "POST"), ("Access-Control-Request-Headers", "content-type,accept,accept-language"));
        Assert.Equal(204, (int)preflight.StatusCode);
        Assert.Equal("*", Assert.Single(preflight.Headers.GetValues("Access-Control-Allow-Origin")));
        Assert.Contains("POST", string.Join(",", preflight.Headers.GetValues("Access-Control-Allow-Methods")).Split(','));
        var headers = string.Join(",", preflight.Headers.GetValues("Access-Control-Allow-Headers")).Split(',');
        Assert.Superset(
            new HashSet<string>(["content-type", "accept", "accept-language"], StringComparer.OrdinalIgnoreCase),
            new HashSet<string>(headers, StringComparer.OrdinalIgnoreCase));
        Assert.Equal("86400", Assert.Single(preflight.Headers.GetValues("Access-Control-Max-Age")));
    }

    [Theory]
    [InlineData("application/json", """{"lines":[{"cone":"6"}]}""", 200)]
    [InlineData("text/csv", "cone\n6\n", 200)]
    // A page must be able to read what was wrong, too.
    [InlineData("application/json", "{", 400)]
    public async Task A_page_posts_and_reads_the_answer(string type, string body, int status)
    {
        using var content = new StringContent(body, System.Text.Encoding.UTF8, type);
        using var post = await api.Send(HttpMethod.Post, "/v1/conversions", content, null, Origin);
        Assert.Equal(status, (int)post.StatusCode);
        Assert.Equal("*", Assert.Single(post.Headers.GetValues("Access-Control-Allow-Origin")));
    }
}
