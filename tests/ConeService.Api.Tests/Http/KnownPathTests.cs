namespace ConeService.Api.Tests.Http;

/// <summary>What is answered by its path is the same the second time, and only for who asks for nothing but the path.</summary>
public class KnownPathTests(Support.Api api)
{
    [Theory]
    [InlineData("/v1/cones")]
    [InlineData("/v1/cones/6")]
    [InlineData("/v1/cones/cone%2006")]
    [InlineData("/cards/cone-06")]
    public async Task The_second_answer_is_the_first(string url)
    {
        var first = await Whole(url);
        foreach (var accept in new[] { null, "*/*", null }) Assert.Equal(first, await Whole(url, accept));
        using var head = await api.Send(HttpMethod.Head, url);
        Assert.Equal(first[..first.IndexOf("\n\n", StringComparison.Ordinal)], Headers(head));
    }

    [Theory]
    [InlineData("/v1/cones/6", "text/html", 200, "text/html")]
    [InlineData("/v1/cones", "text/csv", 200, "text/csv")]
    [InlineData("/v1/cones.csv", null, 200, "text/csv")]
    [InlineData("/v1/cones", "image/png", 406, "application/problem+json")]
    [InlineData("/v1/cones/6?rat=60C/h", null, 400, "application/problem+json")]
    [InlineData("/v1/cones/6?dataset=0.0.1", null, 409, "application/problem+json")]
    public async Task Who_asks_for_more_gets_it(string url, string? accept, int status, string type)
    {
        foreach (var path in new[] { "/v1/cones", "/v1/cones/6" }) await Whole(path);
        using var answer = await api.Get(url, accept);
        Assert.Equal(status, (int)answer.StatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task A_pinned_answer_is_for_ever_and_the_plain_one_is_not()
    {
        var dataset = await api.Json("/v1/dataset");
        var version = dataset.GetProperty("datasetVersion").GetString();
        Assert.DoesNotContain("immutable", await Whole("/v1/cones/6"), StringComparison.Ordinal);
        Assert.Contains("immutable", await Whole("/v1/cones/6?dataset=" + version), StringComparison.Ordinal);
        Assert.DoesNotContain("immutable", await Whole("/v1/cones/6"), StringComparison.Ordinal);
    }

    // On a page of its own a card follows the reader's theme, in a frame it is light.
    [Fact]
    public async Task A_card_on_a_page_of_its_own_is_not_the_one_in_a_frame()
    {
        var framed = await Whole("/cards/cone-6");
        using var alone = await api.Send(HttpMethod.Get, "/cards/cone-6", null, null, ("Sec-Fetch-Dest", "document"));
        Assert.NotEqual(framed.Split("\n\n", 2)[1], await alone.Content.ReadAsStringAsync(Support.Api.Cancel));
    }

    [Fact]
    public async Task Another_method_is_refused()
    {
        await Whole("/v1/cones/6");
        using var posted = await api.Post("/v1/cones/6", "{}");
        Assert.Equal(405, (int)posted.StatusCode);
    }

    private async Task<string> Whole(string url, string? accept = null)
    {
        using var response = await api.Get(url, accept);
        Assert.Equal(200, (int)response.StatusCode);
        return Headers(response) + "\n\n" + await response.Content.ReadAsStringAsync(Support.Api.Cancel);
    }

    private static string Headers(HttpResponseMessage response) => string.Join('\n', response.Headers.Concat(response.Content.Headers)
        .Where(h => h.Key != "Date").OrderBy(h => h.Key, StringComparer.Ordinal).Select(h => $"{h.Key}: {string.Join(", ", h.Value)}"));
}
