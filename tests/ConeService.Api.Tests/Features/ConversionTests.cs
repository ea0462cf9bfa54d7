using System.Globalization;
using System.Text;
using System.Text.Json;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Features;

public class ConversionTests(Support.Api api)
{
    private const string Url = "/v1/conversions";

    [Fact]
    public async Task Good_lines_are_answered_beside_bad_ones()
    {
        using var response = await api.Post(Url, """
            {"lines":[{"cone":"06","rate":"60C/h"},{"cone":6,"rate":"60C/h"},{"temperature":"1222C","rate":"150C/h"},
             {"cone":"0"},{},{"cone":"6","temperature":"1222C"},null]}
            """);
        var answer = await Support.Api.Read(response, 200);
        Assert.Equal((2, 5), (answer.GetProperty("answered").GetInt32(), answer.GetProperty("refused").GetInt32()));
        var lines = answer.GetProperty("lines").EnumerateArray().ToList();
        Assert.Equal(Enumerable.Range(1, 7), lines.Select(l => l.GetProperty("line").GetInt32()));
        Assert.Equal(998, lines[0].GetProperty("endPoint").GetProperty("celsius").GetInt32());
        Assert.Equal("5", lines[2].GetProperty("reading").GetProperty("reached").GetString());
        Assert.Equal(["cone-as-number"], Codes(lines[1]));
        Assert.Equal("/lines/1/cone", lines[1].GetProperty("problems")[0].Place());
        Assert.Equal(["cone-zero"], Codes(lines[3]));
        Assert.Equal(["line-empty"], Codes(lines[4]));
        Assert.Equal(["line-ambiguous"], Codes(lines[5]));
        Assert.Equal(["line-empty"], Codes(lines[6]));
    }

    [Fact]
    public async Task Bare_numbers_take_the_units_of_the_request_and_are_refused_without()
    {
        const string line = """{"temperature":2232,"rate":108}""";
        using var with = await api.Post(Url, $$"""{"units":"F","lines":[{{line}}]}""");
        var reading = (await Support.Api.Read(with, 200)).GetProperty("lines")[0].GetProperty("reading");
        Assert.Equal("6", reading.GetProperty("reached").GetString());
        using var without = await api.Post(Url, $$"""{"lines":[{{line}}]}""");
        Assert.Equal(
            ["rate-unit-missing", "temperature-unit-missing"],
            Codes((await Support.Api.Read(without, 200)).GetProperty("lines")[0]).Order());
    }

    [Fact]
    public async Task Csv_goes_in_and_out_with_a_problem_per_bad_line()
    {
        const string csv = "cone,temperature,rate,chart\n06,,60C/h,\n,2232F,108F/h,witness-self-supporting\n0,,,\n6,,60,\n6,,60C/h,smal\n";
        using var response = await api.Post(Url, csv, "text/csv", "text/csv");
        Assert.Equal("text/csv", response.Content.Headers.ContentType?.MediaType);
        var lines = (await response.Content.ReadAsStringAsync(Support.Api.Cancel)).TrimEnd('\n').Split('\n');
        Assert.Equal(6, lines.Length);
        Assert.StartsWith("line,cone,temperature,rate,chart,celsius,fahrenheit,reached,next,fraction", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("1,cone 06,,60C/h,,998,1828,", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("2,,2232F,108F/h,witness-self-supporting,1222.2222,2232,cone 6,cone 7,0,", lines[2], StringComparison.Ordinal);
        Assert.Contains(",cone-zero,", lines[3], StringComparison.Ordinal);
        Assert.Contains(",rate-unit-missing,", lines[4], StringComparison.Ordinal);
        Assert.Contains("chart-unknown", lines[5], StringComparison.Ordinal);
        Assert.Contains("Probably small", lines[5], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_csv_may_name_its_columns_in_any_order_with_a_byte_order_mark_and_windows_line_ends()
    {
        using var response = await api.Post(Url, "\uFEFFRate,Cone\r\n60C/h,6\r\n\r\n", "text/csv; charset=utf-8");
        var answer = await Support.Api.Read(response, 200);
        Assert.Equal(1222, answer.GetProperty("lines")[0].GetProperty("endPoint").GetProperty("celsius").GetInt32());
    }

    [Theory]
    [InlineData("cone,\n6,60C/h\n", "csv-headers")]
    [InlineData("kegel,ramp\n6,60C/h\n", "csv-headers")]
    [InlineData("cone;rate\n6;60C/h;extra\n", "csv-malformed")]
    [InlineData("rate,chart\n60C/h,small\n", "csv-headers")]
    [InlineData("cone,cone\n6,6\n", "csv-headers")]
    [InlineData("", "empty-request")]
    [InlineData("cone,rate\n", "empty-request")]
    [InlineData("cone,rate\n6,60C/h,extra\n", "csv-malformed")]
    [InlineData("cone,rate\n\"6,60C/h\n", "csv-malformed")]
    public async Task A_csv_that_cannot_be_read_is_refused_whole(string csv, string type)
    {
        using var response = await api.Post(Url, csv, "text/csv");
        Assert.NotEmpty(await Problems.Findings(response, 400, type));
    }

    [Fact]
    public async Task A_problem_names_the_line_of_the_file_and_a_quoted_cell_is_one_cell()
    {
        using var response = await api.Post(Url, "cone,rate\n\n\"6\",\"60C/h\"\n\n0,60C/h\n\"6\n\",\"60,5\"\n0,\n", "text/csv");
        var lines = (await Support.Api.Read(response, 200)).GetProperty("lines").EnumerateArray().ToList();
        Assert.Equal(1222, lines[0].GetProperty("endPoint").GetProperty("celsius").GetInt32());
        Assert.Equal(
            ["line 5, cone", "line 6, rate", "line 8, cone"],
            lines.Skip(1).Select(l => l.GetProperty("problems").EnumerateArray().Last().Place()));
    }

    [Fact]
    public async Task A_csv_that_is_not_UTF_8_is_refused()
    {
        using var content = new ByteArrayContent(
            [.. Encoding.ASCII.GetBytes("cone,rate\n05"), 0xBD, .. Encoding.ASCII.GetBytes(",60C/h\n")]);
        content.Headers.ContentType = new("text/csv");
        using var response = await api.Send(HttpMethod.Post, Url, content);
        await Problems.Findings(response, 400, "csv-malformed");
    }

    [Theory]
    [InlineData(1000, 200)]
    [InlineData(1001, 400)]
    public async Task A_thousand_lines_are_answered_and_one_more_is_refused(int count, int status)
    {
        var lines = Enumerable.Range(0, count)
            .Select(i => string.Create(CultureInfo.InvariantCulture, $$"""{"temperature":"{{700 + (i % 600)}}C","rate":"60C/h"}"""));
        var body = $$"""{"lines":[{{string.Join(",", lines)}}]}""";
        using var response = await api.Post(Url, body);
        if (status == 200) Assert.Equal(count, (await Support.Api.Read(response, 200)).GetProperty("answered").GetInt32());
        else await Problems.Findings(response, 400, "too-many-lines");
    }

    [Theory]
    [InlineData("{}", "empty-request")]
    [InlineData("{\"lines\":[]}", "empty-request")]
    [InlineData("{\"lines\":[{\"cone\":\"6\"}],\"units\":\"K\"}", "units-unknown")]
    [InlineData("{\"lines\":[{\"cone\":\"6\",\"rat\":\"60C/h\"}]}", "unknown-member")]
    [InlineData("{\"line\":[]}", "unknown-member")]
    [InlineData("{\"lines\":[{\"cone\":\"6\",\"cone\":\"06\"}]}", "malformed-json")]
    [InlineData("{\"lines\":[{\"cone\":\"6\"}", "malformed-json")]
    [InlineData("{\"lines\":{}}", "list-expected")]
    [InlineData("null", "object-expected")]
    [InlineData("[]", "object-expected")]
    [InlineData("", "malformed-json")]
    [InlineData("cone 6", "malformed-json")]
    public async Task A_body_that_cannot_be_read_is_refused_whole(string body, string type)
    {
        using var response = await api.Post(Url, body);
        Assert.NotEmpty(await Problems.Findings(response, 400, type));
    }

    [Fact]
    public async Task An_unknown_member_is_named_with_its_place_and_the_likely_one()
    {
        using var response = await api.Post(Url, """{"lines":[{"cone":"6"},{"cone":"6","rat":"60C/h"}]}""");
        var finding = Assert.Single(await Problems.Findings(response, 400, "unknown-member"));
        Assert.Equal("rat", finding.GetProperty("value").GetString());
        Assert.StartsWith("/lines/1", finding.Place(), StringComparison.Ordinal);
        Assert.Equal("Probably rate.", finding.GetProperty("likelyMistake").GetString());
        Assert.Equal(["cone", "temperature", "rate", "chart"], finding.GetProperty("allowed").Strings());
    }

    [Theory]
    [InlineData("application/xml", 415, "content-type-unsupported")]
    [InlineData("application/x-www-form-urlencoded", 415, "content-type-unsupported")]
    public async Task Another_content_type_is_refused(string contentType, int status, string type)
    {
        using var response = await api.Post(Url, "x", contentType);
        var finding = Assert.Single(await Problems.Findings(response, status, type));
        Assert.Equal(["application/json", "text/csv"], finding.GetProperty("allowed").Strings());
    }

    [Fact]
    public async Task Another_accept_is_refused()
    {
        using var response = await api.Post(Url, """{"lines":[{"cone":"6"}]}""", accept: "application/xml");
        await Problems.Findings(response, 406, "not-acceptable");
    }

    private static IEnumerable<string> Codes(JsonElement line) =>
        line.GetProperty("problems").EnumerateArray().Select(p => p.GetProperty("code").GetString()!);
}
