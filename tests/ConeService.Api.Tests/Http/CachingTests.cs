namespace ConeService.Api.Tests.Http;

public class CachingTests(Support.Api api)
{
    [Theory]
    [InlineData("/v1/cones/6")]
    [InlineData("/v1/cones/6/end-point?rate=60C/h")]
    [InlineData("/v1/charts")]
    [InlineData("/cards/cone-6")]
    [InlineData("/problems/cone-zero")]
    public async Task An_answer_has_a_weak_tag_and_a_repeated_question_is_answered_304(string url)
    {
        using var first = await api.Get(url);
        var tag = first.Headers.ETag!;
        Assert.True(tag.IsWeak);
        Assert.NotNull(first.Headers.CacheControl?.MaxAge);
        using var again = await api.Send(HttpMethod.Get, url, null, null, ("If-None-Match", tag.ToString()));
        Assert.Equal(304, (int)again.StatusCode);
        Assert.Empty(await again.Content.ReadAsByteArrayAsync(Support.Api.Cancel));
        using var other = await api.Send(HttpMethod.Get, url, null, null, ("If-None-Match", "W/\"another\""));
        Assert.Equal(200, (int)other.StatusCode);
    }

    [Fact]
    public async Task Text_and_json_of_one_address_have_different_tags()
    {
        using var json = await api.Get("/v1/cones/6/end-point?rate=60C/h");
        using var text = await api.Get("/v1/cones/6/end-point?rate=60C/h", "text/plain");
        Assert.NotEqual(json.Headers.ETag, text.Headers.ETag);
    }

    [Theory]
    [InlineData("/v1/cones/6")]
    [InlineData("/v1/temperatures/1222C/cone")]
    [InlineData("/health/ready")]
    public async Task Head_answers_with_the_headers_of_get_and_no_body(string url)
    {
        using var get = await api.Get(url);
        using var head = await api.Send(HttpMethod.Head, url);
        Assert.Equal(200, (int)head.StatusCode);
        Assert.Equal(get.Headers.ETag, head.Headers.ETag);
        Assert.Empty(await head.Content.ReadAsByteArrayAsync(Support.Api.Cancel));
    }

    [Theory]
    [InlineData("*/*", "application/json")]
    [InlineData("text/plain", "text/plain")]
    [InlineData("text/*", "text/plain")]
    [InlineData("application/json;q=0.5, text/plain", "text/plain")]
    [InlineData("text/plain;q=0.5, application/json", "application/json")]
    // What a browser sends: a person reads, so the page is liked best.
    [InlineData("text/html,application/xhtml+xml,*/*;q=0.8", "text/html")]
    [InlineData("text/html;q=0.5, */*", "application/json")]
    [InlineData("text/plain;q=0, */*", "application/json")]
    public async Task The_accept_header_chooses_the_representation(string accept, string expected)
    {
        using var response = await api.Get("/v1/cones/6/end-point?rate=60C/h", accept);
        Assert.Equal(expected, response.Content.Headers.ContentType?.MediaType);
    }

    [Theory]
    [InlineData("*", 304)]
    [InlineData("\"a\", not a tag", 200)]
    public async Task A_condition_is_read_as_the_rfc_has_it(string condition, int status)
    {
        using var response = await api.Send(HttpMethod.Get, "/v1/cones/6", null, null, ("If-None-Match", condition));
        Assert.Equal(status, (int)response.StatusCode);
    }
}
