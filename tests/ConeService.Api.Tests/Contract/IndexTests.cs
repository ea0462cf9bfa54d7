namespace ConeService.Api.Tests.Contract;

/// <summary>The index at /v1 has every address, and its links lead somewhere.</summary>
public class IndexTests(Support.Api api)
{
    [Fact]
    public async Task Every_route_of_the_document_stands_in_the_index()
    {
        var items = (await api.Json("/v1")).GetProperty("items").EnumerateArray().ToList();
        var listed = items.SelectMany(i => i.GetProperty("methods").EnumerateArray().Select(m => (
            Route: i.GetProperty("href").GetString()!.Split("{?")[0], Method: m.GetString()!.ToLowerInvariant()))).ToHashSet();
        Assert.Empty(OpenApiDocumentFile.Committed.Operations.Except(listed));
        // What the document leaves out has an address all the same.
        Assert.Superset(
            new HashSet<(string, string)> { ("/", "get"), ("/problems", "get"), ("/problems/{code}", "get"), ("/openapi/v1.json", "get") },
            listed);
        Assert.Equal(items.Count, items.Select(i => i.GetProperty("id").GetString()).Distinct().Count());
    }

    [Fact]
    public async Task An_item_says_what_can_be_asked_and_in_which_forms()
    {
        var item = (await api.Json("/v1")).GetProperty("items").EnumerateArray()
            .Single(i => i.GetProperty("id").GetString() == "getEndPoint");
        Assert.Equal("The end point of a cone at a heating rate", item.GetProperty("name").GetString());
        Assert.Equal("/v1/cones/{cone}/end-point{?rate,chart,unit,dataset}", item.GetProperty("href").GetString());
        Assert.Equal(["GET", "HEAD"], item.GetProperty("methods").EnumerateArray().Select(m => m.GetString()));
        Assert.Equal(
            ["application/json", "text/plain", "text/html"], item.GetProperty("formats").EnumerateArray().Select(m => m.GetString()));
    }

    [Fact]
    public async Task Every_link_of_the_index_answers_get_and_head_in_every_format()
    {
        foreach (var item in (await api.Json("/v1")).GetProperty("items").EnumerateArray())
        {
            var href = item.GetProperty("href").GetString()!.Split("{?")[0];
            if (href.Contains('{', StringComparison.Ordinal) || item.GetProperty("methods")[0].GetString() != "GET") continue;
            // A question that is nothing without its parameters: RouteQuestions asks it, and OEmbedTests.
            if (href is "/v1/pairings/check" or "/v1/dataset/changes" or "/v1/search" or "/oembed") continue;
            foreach (var type in item.GetProperty("formats").EnumerateArray().Select(f => f.GetString()!))
            {
                using var get = await api.Get(href, type);
                Assert.Equal(200, (int)get.StatusCode);
                Assert.Equal(type, get.Content.Headers.ContentType?.MediaType);
                using var head = await api.Send(HttpMethod.Head, href, null, type);
                Assert.Equal(200, (int)head.StatusCode);
                Assert.Equal(get.Headers.ETag, head.Headers.ETag);
                Assert.Equal(get.Content.Headers.ContentType, head.Content.Headers.ContentType);
            }
        }
    }

    // RFC 9110, 9.1: HEAD goes wherever GET does.
    [Theory]
    [MemberData(nameof(RouteQuestions.All), MemberType = typeof(RouteQuestions))]
    public async Task Head_answers_wherever_get_does(string route, string url, string? body)
    {
        if (body is not null) return;
        Assert.NotEmpty(route);
        using var head = await api.Send(HttpMethod.Head, url);
        Assert.Equal(200, (int)head.StatusCode);
        Assert.NotNull(head.Content.Headers.ContentLength);
        Assert.Empty(await head.Content.ReadAsByteArrayAsync(Support.Api.Cancel));
    }

    [Fact]
    public async Task A_browser_gets_the_index_as_a_page_with_links()
    {
        using var response = await api.Get("/v1", "text/html,*/*;q=0.8");
        var html = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Contains("<h1>ConeService</h1>", html, StringComparison.Ordinal);
        Assert.Contains("<a href=\"/problems\">/problems</a>", html, StringComparison.Ordinal);
        Assert.Contains("<a href=\"/v1/charts\">", html, StringComparison.Ordinal);
    }

    // RFC 8631: service-desc leads to a description for programs, service-doc to one for people.
    [Theory]
    [InlineData("/")]
    [InlineData("/v1")]
    [InlineData("/openapi/v1.json")]
    [InlineData("/v1/cones/6")]
    [InlineData("/v1/cones/6/end-point?rate=60C/h")]
    public async Task An_answer_names_the_document_and_its_page(string url)
    {
        using var response = await api.Get(url);
        var link = Assert.Single(response.Headers.GetValues("Link"));
        Assert.Contains("</openapi/v1.json>; rel=\"service-desc\"", link, StringComparison.Ordinal);
        Assert.Contains("</docs>; rel=\"service-doc\"", link, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_document_is_cached_by_its_tag()
    {
        using var first = await api.Get("/openapi/v1.json");
        Assert.Equal("application/json", first.Content.Headers.ContentType?.MediaType);
        using var head = await api.Send(HttpMethod.Head, "/openapi/v1.json");
        Assert.Equal(200, (int)head.StatusCode);
        Assert.Equal(first.Headers.ETag, head.Headers.ETag);
        using var again = await api.Send(HttpMethod.Get, "/openapi/v1.json", null, null, ("If-None-Match", first.Headers.ETag!.ToString()));
        Assert.Equal(304, (int)again.StatusCode);
        // A browser that opens the document sees the document.
        using var opened = await api.Get("/openapi/v1.json", "text/html,*/*;q=0.8");
        Assert.Equal("application/json", opened.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public void Every_post_says_that_it_may_be_repeated_and_nothing_else_does()
    {
        foreach (var path in OpenApiDocumentFile.Committed.Root.GetProperty("paths").EnumerateObject())
        {
            foreach (var operation in path.Value.EnumerateObject())
            {
                var harmless = operation.Value.TryGetProperty("x-retry-harmless", out var said) && said.GetBoolean();
                Assert.Equal(operation.Name == "post", harmless);
            }
        }
    }
}
