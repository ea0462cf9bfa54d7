using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

/// <summary>
/// The contract: Accept chooses the representation, a suffix does the same for those who can't send headers; the suffix wins.
/// </summary>
public class SuffixTests(Support.Api api)
{
    // The chart prints 1222 °C for cone 6 at 60 °C/h, which is 2231.6 °F (orton-2016).
    [Theory]
    [InlineData("/v1/cones/6/end-point.txt?rate=60C/h&unit=C", "1222")]
    [InlineData("/v1/cones/6/end-point.txt?rate=60C/h&unit=F", "2232")]
    [InlineData("/v1/cones/6/end-point.txt?unit=c&rate=60C/h", "1222")]
    [InlineData("/v1/cones/6/end-point.txt?rate=60C/h", "1222 °C (2232 °F)\n")]
    public async Task A_cell_of_a_spreadsheet_gets_one_bare_line(string url, string expected)
    {
        using var response = await api.Get(url, "application/json");
        Assert.Equal("text/plain", response.Content.Headers.ContentType?.MediaType);
        Assert.Equal(expected, await response.Content.ReadAsStringAsync(Support.Api.Cancel));
    }

    [Fact]
    public async Task A_unit_that_is_none_is_refused()
    {
        using var response = await api.Get("/v1/cones/6/end-point.txt?unit=K");
        var finding = Assert.Single(await Problems.Findings(response, 400, "units-unknown"));
        Assert.Equal("K", finding.GetProperty("value").GetString());
    }

    [Theory]
    [InlineData("/v1/cones.json", "text/html", "application/json")]
    [InlineData("/v1/cones.html", "application/json", "text/html")]
    [InlineData("/v1/cones/6.html", null, "text/html")]
    [InlineData("/v1/cones/05.5.html", null, "text/html")]
    [InlineData("/v1/clay-bodies/red-earthenware.HTML", null, "text/html")]
    [InlineData("/v1/temperatures/1222.5C/cone.txt", null, "text/plain")]
    [InlineData("/v1.html", null, "text/html")]
    [InlineData("/v1.json", "text/html", "application/json")]
    public async Task The_suffix_wins_over_the_header(string url, string? accept, string expected)
    {
        using var response = await api.Get(url, accept);
        Assert.Equal(200, (int)response.StatusCode);
        Assert.Equal(expected, response.Content.Headers.ContentType?.MediaType);
    }

    [Theory]
    [InlineData("/v1/schedules/raku-western/fit.ics", "text/calendar")]
    [InlineData("/v1/schedules/raku-western/fit.svg", "image/svg+xml")]
    [InlineData("/v1/schedules/raku-western/fit.csv", "text/csv")]
    [InlineData("/v1/schedules/raku-western/fit.html", "text/html")]
    public async Task A_post_has_suffixes_too(string url, string expected)
    {
        using var response = await api.Post(url, """{"units":"C","start":"2026-12-07T05:00:00Z"}""");
        Assert.Equal(200, (int)response.StatusCode);
        Assert.Equal(expected, response.Content.Headers.ContentType?.MediaType);
    }

    // RFC 3986, 2.4: a part is not decoded twice. "%2536" is the text "%36" and not the digit 6, with a suffix as without.
    [Theory]
    [InlineData("/v1/cones/%2536", "%36")]
    [InlineData("/v1/cones/%2536.json", "%36")]
    [InlineData("/v1/cones/%2500.json", "%00")]
    public async Task A_path_is_decoded_once(string url, string id)
    {
        using var response = await api.Get(url, "application/json");
        var finding = Assert.Single(await Problems.Findings(response, 400, "cone-unreadable"));
        Assert.Equal(id, finding.GetProperty("value").GetString());
    }

    [Theory]
    [InlineData("/v1/cones/6/end-point.svg", ".json, .txt, .html")]
    [InlineData("/v1/cones/6/end-point.xlsx", ".json, .txt, .html")]
    [InlineData("/v1/sources/orton-2016.pdf", ".json, .html")]
    public async Task A_suffix_that_an_address_does_not_have_is_refused_with_those_it_has(string url, string allowed)
    {
        using var response = await api.Get(url);
        var finding = Assert.Single(await Problems.Findings(response, 406, "not-acceptable"));
        Assert.Equal(new Uri(url, UriKind.Relative).ToString(), finding.GetProperty("value").GetString());
        Assert.Equal(allowed, string.Join(", ", finding.GetProperty("allowed").Strings()));
    }

    // A dot inside a cone or a temperature is no suffix.
    [Theory]
    [InlineData("/v1/cones/05.5", "05.5")]
    [InlineData("/v1/cones/05.5.json", "05.5")]
    public async Task A_dot_in_an_id_stays(string url, string cone) =>
        Assert.Equal(cone, (await api.Json(url)).GetProperty("cone").GetString());

    [Fact]
    public async Task What_is_not_there_is_told_with_the_path_as_asked()
    {
        using var response = await api.Get("/v1/claybodies.json");
        var finding = Assert.Single(await Problems.Findings(response, 404, "not-found"));
        Assert.Equal("/v1/claybodies.json", finding.GetProperty("value").GetString());
        Assert.Equal("Probably /v1/clay-bodies.json.", finding.GetProperty("likelyMistake").GetString());
    }
}
