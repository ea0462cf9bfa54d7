using System.Net;
using System.Text;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

public class ProblemTests(Support.Api api)
{
    [Theory]
    [InlineData("/v1/cones/0", "cone-zero", "cone", "0")]
    [InlineData("/v1/cones/00", "cone-zero", "cone", "00")]
    [InlineData("/v1/cones/6.0", "cone-unreadable", "cone", "6.0")]
    [InlineData("/v1/cones/-6", "cone-unreadable", "cone", "-6")]
    [InlineData("/v1/cones/6.5", "cone-unknown", "cone", "6.5")]
    [InlineData("/v1/cones/43", "cone-unknown", "cone", "43")]
    [InlineData("/v1/cones/six", "cone-unreadable", "cone", "six")]
    [InlineData("/v1/cones/6/end-point?rate=60", "rate-unit-missing", "rate", "60")]
    [InlineData("/v1/cones/6/end-point?rate=60C", "rate-unit-missing", "rate", "60C")]
    [InlineData("/v1/cones/6/end-point?rate=0C/h", "rate-out-of-range", "rate", "0C/h")]
    [InlineData("/v1/cones/6/end-point?rate=4C/h", "rate-out-of-range", "rate", "4C/h")]
    [InlineData("/v1/cones/6/end-point?rate=601C/h", "rate-out-of-range", "rate", "601C/h")]
    [InlineData("/v1/cones/6/end-point?rate=fast", "rate-unreadable", "rate", "fast")]
    [InlineData("/v1/cones/6/end-point?chart=wittness-large", "chart-unknown", "chart", "wittness-large")]
    [InlineData("/v1/cones/6/end-point?chart=seger-1918&rate=60C/h", "rate-not-applicable", "rate", "60C/h")]
    [InlineData("/v1/cones/31/end-point?chart=pce&rate=60C/h", "rate-not-computable", "rate", "60C/h")]
    [InlineData("/v1/cones/15/end-point", "cone-not-on-chart", "cone", "15")]
    [InlineData("/v1/cones/6/end-point?rat=60C/h", "unknown-parameter", "rat", "60C/h")]
    [InlineData("/v1/cones/6/end-point?rate=60C/h&rate=150C/h", "repeated-parameter", "rate", "60C/h,150C/h")]
    [InlineData("/v1/cones/6?rate=60C/h", "unknown-parameter", "rate", "60C/h")]
    [InlineData("/v1/cone-facts?topic=soaking", "topic-unknown", "topic", "soaking")]
    [InlineData("/v1/temperatures/2232/cone?rate=60C/h", "temperature-unit-missing", "temperature", "2232")]
    [InlineData("/v1/temperatures/hot/cone", "temperature-unreadable", "temperature", "hot")]
    [InlineData("/v1/temperatures/2232C/cone", "temperature-outside-scale", "temperature", "2232C")]
    [InlineData("/v1/temperatures/20C/cone", "temperature-outside-scale", "temperature", "20C")]
    public async Task Bad_input_is_refused_with_field_value_and_what_is_allowed(string url, string type, string field, string value)
    {
        using var response = await api.Get(url);
        var finding = Assert.Single(await Problems.Findings(response, 400, type));
        Assert.Equal(type, finding.GetProperty("code").GetString());
        Assert.Equal(field, finding.Place());
        Assert.Equal(value, finding.GetProperty("value").GetString());
        Assert.NotEmpty(finding.GetProperty("message").GetString()!);
        Assert.NotEmpty(finding.GetProperty("allowed").EnumerateArray());
    }

    [Fact]
    public async Task Several_mistakes_come_back_at_once()
    {
        using var response = await api.Get("/v1/cones/0/end-point?rate=60&chart=smal");
        var findings = await Problems.Findings(response, 400, "invalid-request");
        Assert.Equal(["cone", "chart", "rate"], findings.Select(f => f.Place()));
    }

    [Theory]
    [InlineData("/v1/charts/witness", 404)]
    [InlineData("/v1/sources/orton", 404)]
    [InlineData("/v1/nothing", 404)]
    [InlineData("/nothing", 404)]
    [InlineData("/problems/cone-zeroo", 404)]
    [InlineData("/cards/kiln-6", 404)]
    public async Task What_is_not_there_is_a_problem_too(string url, int status)
    {
        using var response = await api.Get(url);
        await Problems.Findings(response, status, "not-found");
    }

    [Fact]
    public async Task Near_matches_are_offered_for_an_unknown_chart()
    {
        using var response = await api.Get("/v1/charts/self-suporting");
        var finding = Assert.Single(await Problems.Findings(response, 404, "not-found"));
        Assert.Contains("witness-self-supporting", finding.GetProperty("allowed").Strings());
    }

    [Fact]
    public async Task Another_method_is_refused_with_the_ones_allowed()
    {
        using var response = await api.Send(HttpMethod.Delete, "/v1/cones/6");
        await Problems.Findings(response, 405, "method-not-allowed");
        Assert.Contains("GET", response.Content.Headers.Allow);
    }

    [Fact]
    public async Task A_body_over_the_limit_is_refused()
    {
        // The service answers and hangs up without reading; a caller in the middle of sending would see only a broken pipe.
        using var body = new StringContent(new string(' ', 5_000_000) + "{}", Encoding.UTF8, "application/json");
        using var response = await api.Send(HttpMethod.Post, "/v1/conversions", body, headers: ("Expect", "100-continue"));
        await Problems.Findings(response, 413, "request-too-large");
    }

    [Theory]
    [InlineData("/v1/colours/resolve", null, "application/json")]
    [InlineData("/v1/colours/resolve", "text/xml", "application/json")]
    [InlineData("/v1/conversions", null, "application/json, text/csv")]
    [InlineData("/v1/conversions", "text/xml", "application/json, text/csv")]
    public async Task A_body_of_another_type_is_refused_with_the_types_that_are_read(string url, string? type, string allowed)
    {
        using var body = new ByteArrayContent("{}"u8.ToArray());
        if (type is not null) body.Headers.ContentType = new(type);
        using var response = await api.Send(HttpMethod.Post, url, body);
        var finding = Assert.Single(await Problems.Findings(response, 415, "content-type-unsupported"));
        Assert.Equal(allowed, string.Join(", ", finding.GetProperty("allowed").Strings()));
        Assert.Equal(type, finding.GetProperty("value").GetString());
        Assert.StartsWith("curl sends form data", finding.GetProperty("likelyMistake").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("null", "object-expected", "", "null", "The body is null, not an object.", null)]
    [InlineData("", "malformed-json", "/", null, "The body can't be read as JSON of this form at line 1, byte 1.", "A comma too many")]
    [InlineData(
        "{\n\"lines\":6;}", "malformed-json", "/lines", null, "The body can't be read as JSON of this form at line 2, byte 10.", "A comma")]
    [InlineData("{\"lines\":6}", "list-expected", "/lines", "6", "lines is a list.", "One alone is a list too")]
    [InlineData(
        "{\"lines\":[{\"cnoe\":\"6\"}]}", "unknown-member", "/lines/0/cnoe", "cnoe",
        "There is no member “cnoe” here.", "Probably cone.")]
    [InlineData(
        "{\"lines\":[{\"cone\":\"6\"}],\"xyzzy\":1}", "unknown-member", "/xyzzy", "xyzzy", "There is no member “xyzzy” here.", null)]
    [InlineData(
        "{\"lines\":[{\"cone\":\"6\"}],\"lines\":[]}", "malformed-json", "/lines", "lines",
        "The member “lines” stands twice in one object.", null)]
    public async Task A_body_that_is_not_of_the_form_is_refused_at_its_place(
        string body, string type, string field, string? value, string message, string? mistake)
    {
        using var response = await api.Post("/v1/conversions", body);
        var finding = Assert.Single(await Problems.Findings(response, 400, type));
        Assert.Equal(
            [field, value, message],
            [finding.Place(), .. ((string[])["value", "message"]).Select(m => finding.GetProperty(m).GetString())]);
        Assert.StartsWith(mistake ?? "", finding.GetProperty("likelyMistake").GetString() ?? "", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("image/png")]
    [InlineData("///")]
    public async Task A_media_type_that_is_not_offered_is_refused_with_those_that_are(string accept)
    {
        using var response = await api.Get("/v1/cones/6/end-point", accept);
        var finding = Assert.Single(await Problems.Findings(response, 406, "not-acceptable"));
        Assert.Equal(["application/json", "text/plain", "text/html"], finding.GetProperty("allowed").Strings());
    }

    [Fact]
    public async Task Head_of_a_problem_has_its_headers_and_no_body()
    {
        using var response = await api.Send(HttpMethod.Head, "/v1/cones/0");
        Assert.Equal(400, (int)response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        Assert.Empty(await response.Content.ReadAsByteArrayAsync(Support.Api.Cancel));
    }

    [Fact]
    public async Task The_pages_at_the_root_and_of_the_problems_lead_on()
    {
        Assert.All(await Links("/"), link => Assert.StartsWith("/", link, StringComparison.Ordinal));
        foreach (var link in (await Links("/")).Concat((await Links("/problems")).Take(3)))
        {
            using var response = await api.Get(link);
            Assert.True(response.IsSuccessStatusCode, link);
        }

        async Task<List<string>> Links(string page)
        {
            using var response = await api.Get(page);
            var html = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
            return [.. html.Split("href=\"").Skip(1).Select(l => WebUtility.HtmlDecode(l[..l.IndexOf('"', StringComparison.Ordinal)]))];
        }
    }

    [Fact]
    public async Task A_problem_without_a_page_is_refused_with_those_near_it()
    {
        using var near = await api.Get("/problems/cone-zeroo");
        var finding = Assert.Single(await Problems.Findings(near, 404, "not-found"));
        Assert.Equal("Probably cone-zero.", finding.GetProperty("likelyMistake").GetString());
        using var far = await api.Get("/problems/qqqqqqqq");
        Assert.Null(Assert.Single(await Problems.Findings(far, 404, "not-found")).GetProperty("likelyMistake").GetString());
    }
}
