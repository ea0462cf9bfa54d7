using System.Net;
using System.Net.Http.Headers;
using System.Xml.Linq;
using ConeService.Api.Tests.Contract;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Features;

public class HeatWorkTests(Support.Api api)
{
    private const string Programme = """{"units":"C","start":20,"segments":[{"rate":60,"target":1222,"holdMinutes":10}]}""";

    // Source: heat-work specification section 7: 60 °C/h to 1222 plus 10 min, instant cool: I₆ = 1.406, 6 → 7 f = 0.474.
    [Fact]
    public async Task A_programme_is_answered_with_the_cone_and_everything_assumed()
    {
        using var response = await api.Post("/v1/heat-work", Programme);
        var answer = await Support.Api.Read(response, 200);
        Assert.Equal("6 and 0.47 of the way to 7", answer.GetProperty("reading").GetString());
        Assert.Equal(0.474, answer.GetProperty("fraction").GetDouble(), 0.00055);
        var cone = answer.GetProperty("cones").EnumerateArray().Single(c => c.GetProperty("cone").GetString() == "6");
        Assert.Equal(1.406, cone.GetProperty("progress").GetDouble(), 0.0005);
        Assert.Equal(90, cone.GetProperty("bendDegrees").GetDouble());
        // 1202 °C at 60 °C/h.
        Assert.Equal(1202, cone.GetProperty("downAtMinutes").GetDouble(), 0.01);
        Assert.Equal(38, answer.GetProperty("cones").GetArrayLength());
        Assert.Equal(
            [
                "/chart", "/thermocouple/type", "/thermocouple/standard", "/thermocouple/class", "/thermocouple/firings",
                "/uncertainty/coneCelsiusDifference", "/uncertainty/gradientCelsiusDifference",
            ],
            answer.GetProperty("assumed").EnumerateArray().Select(a => a.Place()));
        Assert.Contains("iec-60584", answer.GetProperty("sources").Strings());
    }

    // The logs are invented, all of one firing: 100, 150 and 60 °C/h to 1222 °C, ten minutes, natural cooling.
    [Theory]
    [InlineData("clean.csv", null)]
    [InlineData("semicolon-decimal-comma.csv", null)]
    [InlineData("tab-fahrenheit.tsv", null)]
    [InlineData("clock-past-midnight.csv", "clock-passed-midnight")]
    [InlineData("timestamps.csv", "columns-ignored")]
    [InlineData("duplicates.csv", "duplicate-times")]
    [InlineData("unsorted.csv", "samples-out-of-order")]
    [InlineData("newest-first.csv", "log-newest-first")]
    [InlineData("spikes.csv", "spikes-rejected")]
    [InlineData("gap-while-heating.csv", "gaps")]
    [InlineData("coarse.csv", "coarse-sampling")]
    [InlineData("thousands-points.csv", null)]
    [InlineData("thousands-commas.csv", "thousands-read")]
    [InlineData("open-thermocouple.csv", "excursions-cut")]
    [InlineData("error-words.csv", "readings-missing")]
    [InlineData("german-dates.csv", null)]
    [InlineData("american-dates.csv", null)]
    [InlineData("spring-forward.csv", "clock-changed", "?timeZone=Europe/Berlin")]
    [InlineData("restarted.csv", "log-restarted")]
    [InlineData("three-thermocouples.csv", "zones-differ")]
    [InlineData("comments-and-units.csv", "lines-skipped")]
    [InlineData("utf-16.txt", null)]
    [InlineData("either-date.csv", null, "?dateOrder=day-first")]
    public async Task A_sample_log_gives_the_cone_and_says_what_was_found(string file, string? warning, string query = "")
    {
        using var response = await Upload(file, query);
        var answer = await Support.Api.Read(response, 200);
        Assert.Equal(("6", "7"), (answer.GetProperty("reached").GetString(), answer.GetProperty("next").GetString()));
        var codes = answer.GetProperty("warnings").EnumerateArray().Select(w => w.GetProperty("code").GetString())
            .Where(c => c != "thermocouple-beyond-range").ToList();
        if (warning is null) Assert.Empty(codes);
        else Assert.Contains(warning, codes);
        var log = answer.GetProperty("log");
        Assert.InRange(log.GetProperty("used").GetInt32(), 20, log.GetProperty("samples").GetInt32());
    }

    [Theory]
    [InlineData("fahrenheit-called-celsius.csv", "units-suspect", "line 305")]
    [InlineData("no-unit.csv", "units-missing", "line 1")]
    [InlineData("no-time-unit.csv", "log-time-unit-missing", "line 2")]
    [InlineData("empty.csv", "log-empty", "")]
    [InlineData("one-sample.csv", "log-too-short", "line 2")]
    [InlineData("only-thousands.csv", "number-ambiguous", "line 2")]
    [InlineData("shorted-near-the-top.csv", "log-blind-near-top", "line 282")]
    [InlineData("gap.csv", "log-gap-near-top", "line 273")]
    [InlineData("other-thermocouple.csv", "log-step-impossible", "line 152")]
    [InlineData("either-date.csv", "log-date-ambiguous", "line 2")]
    [InlineData("spring-forward.csv", "log-clock-change", "line 272")]
    [InlineData("restarted-near-the-top.csv", "log-restarted", "line 292")]
    [InlineData("clock-set-back.csv", "log-time-backwards", "line 153")]
    [InlineData("truncated.csv", "csv-malformed", "line 202")]
    public async Task A_sample_log_that_cannot_be_used_is_refused_with_its_line(string file, string code, string field)
    {
        using var response = await Upload(file);
        var finding = (await Problems.Findings(response, 400, code))[0];
        Assert.Equal(field, finding.Place());
        Assert.NotEmpty(finding.GetProperty("allowed").EnumerateArray());
    }

    [Fact]
    public async Task A_unit_in_the_query_serves_a_header_without_one()
    {
        using var response = await Upload("no-unit.csv", "?units=C&chart=witness-large&thermocoupleType=S&thermocoupleClass=1&firings=12");
        var answer = await Support.Api.Read(response, 200);
        Assert.Equal("witness-large", answer.GetProperty("chart").GetString());
        Assert.Equal("S", answer.GetProperty("thermocouple").GetProperty("type").GetString());
    }

    // A firing of cone 7, and beside it a column whose quoted text holds a separator and a number.
    [Fact]
    public async Task A_quoted_text_beside_the_temperature_does_not_change_the_cone()
    {
        var lines = Enumerable.Range(0, 241).Select(i => (Minutes: i * 5, Celsius: 40 + (i * 5.0))).ToList();
        string Csv(string header, Func<(int Minutes, double Celsius), string> row) => header + "\n" + string.Join('\n', lines.Select(row));
        using var clean = await api.Post(
            "/v1/heat-work", Csv("minutes,temperature_c", l => FormattableString.Invariant($"{l.Minutes},{l.Celsius}")), "text/csv");
        using var noted = await api.Post(
            "/v1/heat-work",
            Csv("minutes,note,temperature_c", l => FormattableString.Invariant($"{l.Minutes},\"zone 1, 600\",{l.Celsius}")),
            "text/csv");
        var (expected, answer) = (await Support.Api.Read(clean, 200), await Support.Api.Read(noted, 200));
        Assert.Equal(expected.GetProperty("reading").GetString(), answer.GetProperty("reading").GetString());
        Assert.Equal(expected.GetProperty("cones").GetRawText(), answer.GetProperty("cones").GetRawText());
        Assert.Equal(1240, answer.GetProperty("peakCelsius").GetDouble());
        Assert.Equal(
            ["columns-ignored"],
            answer.GetProperty("warnings").EnumerateArray().Select(w => w.GetProperty("code").GetString())
                .Where(c => c != "thermocouple-beyond-range"));
    }

    // What is left of the upload when reading on is of no use is no line of it.
    [Fact]
    public async Task A_long_log_full_of_errors_names_each_error_once()
    {
        using var response = await api.Post(
            "/v1/heat-work", "minutes,temperature_c\n" + string.Concat(Enumerable.Repeat("x,y\n", 5000)), "text/csv");
        var findings = await Problems.Findings(response, 400, "log-time-unreadable");
        Assert.Equal(["line 2"], findings.Select(f => f.Place()));
    }

    // Cold logs of two hours, in which three readings are words and one is that of a reversed thermocouple.
    [Theory]
    [InlineData("not-numbers.csv", "readings-missing", 3)]
    [InlineData("out-of-range.csv", "spikes-rejected", 1)]
    public async Task Readings_that_are_none_are_told_and_bridged(string file, string code, int count)
    {
        using var response = await Upload(file);
        var warning = (await Support.Api.Read(response, 200)).GetProperty("warnings").EnumerateArray()
            .Single(w => w.GetProperty("code").GetString() == code);
        Assert.Equal(count, warning.GetProperty("count").GetInt32());
    }

    [Theory]
    [InlineData("?timeZone=Berlin", "time-zone-unknown", "timeZone")]
    [InlineData("?dateOrder=dmy", "word-unknown", "dateOrder")]
    public async Task A_wrong_way_to_read_a_log_is_refused(string query, string code, string field)
    {
        using var response = await Upload("clean.csv", query);
        Assert.Equal(field, (await Problems.Findings(response, 400, code))[0].Place());
    }

    [Theory]
    [InlineData("""{"segments":[{"rate":60,"target":1222}]}""", "member-missing", "/units")]
    [InlineData("""{"units":"C"}""", "firing-ambiguous", "/segments")]
    [InlineData("""{"units":"C","segments":[]}""", "empty-request", "/segments")]
    [InlineData("""{"units":"C","log":[]}""", "log-empty", "/log")]
    [InlineData("""{"units":"C","log":[{"minutes":0,"temperature":20}]}""", "log-too-short", "/log/0")]
    [InlineData("""{"units":"C","log":[{"minutes":0,"temperature":20},{"minutes":9}]}""", "log-value-unreadable", "/log/1")]
    [InlineData("""{"units":"C","log":[{"minutes":0,"temperature":20},{"minutes":9,"temperature":2232}]}""", "units-suspect", "/log/1")]
    [InlineData("""{"units":"C","log":[{"minutes":0,"temperature":NaN}]}""", "malformed-json", "/log/0/temperature")]
    [InlineData("""{"units":"C","segments":[{"holdMinutes":10}]}""", "segment-without-target", "/segments/0/target")]
    [InlineData("""{"units":"C","segments":[{"rate":0,"target":1222}]}""", "number-out-of-range", "/segments/0/rate")]
    [InlineData("""{"units":"C","segments":[{"rate":60,"target":2232}]}""", "units-suspect", "/segments/0/target")]
    [InlineData("""{"units":"C","segments":[{"rate":60,"target":-40}]}""", "number-out-of-range", "/segments/0/target")]
    [InlineData("""{"units":"C","start":20,"segments":[{"rate":60,"target":20}]}""", "programme-does-nothing", "/segments")]
    [InlineData("""{"units":"C","segments":[{"rate":60,"target":1222}],"chart":"seger-1918"}""", "chart-without-kinetics", "/chart")]
    [InlineData(
        """{"units":"C","segments":[{"rate":60,"target":1222}],"thermocouple":{"type":"X"}}""", "thermocouple-unknown", "/thermocouple")]
    [InlineData("""{"units":"C","segments":[{"rate":60,"target":1222}],"atmosphere":"smoky"}""", "atmosphere-unknown", "/atmosphere")]
    [InlineData(
        """{"units":"C","segments":[{"rate":60,"target":1222}],"coolingRate":100,"naturalCooling":{"firstRate":100}}""",
        "cooling-ambiguous", "/naturalCooling")]
    [InlineData("""{"units":"C","segments":[{"rate":60,"target":1222}],"coolingrate":100}""", "unknown-member", "/coolingrate")]
    public async Task A_bad_firing_is_refused_with_its_place(string body, string code, string field)
    {
        using var response = await api.Post("/v1/heat-work", body);
        Assert.Equal(field, (await Problems.Findings(response, 400, code))[0].Place());
    }

    [Fact]
    public async Task Ten_thousand_and_one_segments_are_too_many()
    {
        var segments = string.Join(',', Enumerable.Repeat("""{"rate":60,"target":1222}""", 10_001));
        using var response = await api.Post("/v1/heat-work", $$"""{"units":"C","segments":[{{segments}}]}""");
        await Problems.Findings(response, 400, "too-many-segments");
    }

    [Fact]
    public async Task A_log_of_several_megabytes_is_read_and_one_over_the_limit_is_not()
    {
        var lines = string.Concat(
            Enumerable.Range(0, 200_000).Select(i => FormattableString.Invariant($"{i},{20 + (i * 0.005):0.000}     \n")));
        using var large = await api.Post("/v1/heat-work", "seconds,temperature_c\n" + lines, "text/csv");
        Assert.Equal(200_000, (await Support.Api.Read(large, 200)).GetProperty("log").GetProperty("samples").GetInt32());

        using var content = new ByteArrayContent(new byte[(10 * 1024 * 1024) + 1]);
        content.Headers.ContentType = MediaTypeHeaderValue.Parse("text/csv");
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/heat-work") { Content = content };
        request.Headers.ExpectContinue = true;
        using var refused = await api.Client.SendAsync(request, Support.Api.Cancel);
        var finding = Assert.Single(await Problems.Findings(refused, 413, "request-too-large"));
        Assert.Contains("10,485,760", finding.GetProperty("allowed").Strings()[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_figure_is_an_image_with_a_title_and_no_script()
    {
        using var response = await api.Post("/v1/heat-work", Programme, accept: "image/svg+xml");
        Assert.Equal((HttpStatusCode.OK, "image/svg+xml"), (response.StatusCode, response.Content.Headers.ContentType?.MediaType));
        var svg = XDocument.Parse(await response.Content.ReadAsStringAsync(Support.Api.Cancel)).Root!;
        XNamespace ns = "http://www.w3.org/2000/svg";
        Assert.Equal("Firing to cone 6 and 0.47 of the way to 7", svg.Element(ns + "title")?.Value);
        Assert.Contains("cone 6 at 20.03 hours", svg.Element(ns + "desc")?.Value, StringComparison.Ordinal);
        Assert.Equal("img", svg.Attribute("role")?.Value);
        Assert.DoesNotContain(
            svg.Descendants(),
            e => e.Name.LocalName is "script" or "foreignObject"
                || e.Attributes().Any(a => a.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || a.Name.LocalName == "href"));
        Assert.Contains(svg.Descendants(ns + "text"), t => t.Value == "6");
    }

    [Theory]
    [InlineData("hold", """{"rate":60,"target":1202}""", "holdMinutes", 31, 0.5)]
    [InlineData("rate", """{"rate":null,"target":1230}""", "celsiusPerHour", 85.2, 0.05)]
    [InlineData("peak", """{"rate":60}""", "celsius", 1222, 0.001)]
    public async Task A_firing_is_solved_for_a_cone(string find, string segment, string member, double expected, double tolerance)
    {
        using var response = await api.Post(
            "/v1/heat-work/solve", $$"""{"units":"C","segments":[{{segment}}],"cone":"6","find":"{{find}}"}""");
        var answer = await Support.Api.Read(response, 200);
        Assert.True(answer.GetProperty("feasible").GetBoolean());
        // Source: heat-work specification section 7, and the chart's printed 1222 °C.
        Assert.Equal(expected, answer.GetProperty(member).GetDouble(), tolerance);
        Assert.Equal("6", answer.GetProperty("heatWork").GetProperty("reached").GetString());
    }

    [Theory]
    [InlineData("""{"units":"C","segments":[{"rate":60,"target":1222}],"cone":6,"find":"hold"}""", "cone-as-number")]
    [InlineData("""{"units":"C","segments":[{"rate":60,"target":1222}],"cone":"6"}""", "member-missing")]
    [InlineData("""{"units":"C","segments":[{"rate":60,"target":1222}],"find":"hold"}""", "member-missing")]
    [InlineData("""{"units":"C","log":[{"minutes":0,"temperature":20},{"minutes":480,"temperature":1100}],"cone":"6","find":"hold"}""",
        "firing-ambiguous")]
    public async Task A_bad_question_is_refused(string body, string code)
    {
        using var response = await api.Post("/v1/heat-work/solve", body);
        await Problems.Findings(response, 400, code);
    }

    [Fact]
    public async Task Witness_cones_tell_how_far_the_meter_is_off()
    {
        const string seen = """
            "observations":[{"cone":"6","look":"down"},{"cone":"7","clock":3},{"cone":"10","look":"standing"}]
            """;
        var firing = Programme[..^1] + "," + seen + "}";
        using var one = await api.Post("/v1/heat-work/compare", firing);
        var single = (await Support.Api.Read(one, 200)).GetProperty("firings")[0];
        Assert.InRange(single.GetProperty("offset").GetProperty("celsiusDifference").GetDouble(), -5, 10);
        using var two = await api.Post("/v1/heat-work/compare", $$"""{"firings":[{{firing}},{{firing}}]}""");
        var both = await Support.Api.Read(two, 200);
        var pooled = both.GetProperty("pooled");
        Assert.Equal(System.Text.Json.JsonValueKind.Null, both.GetProperty("trend").ValueKind);
        Assert.True(
            pooled.GetProperty("standardErrorCelsiusDifference").GetDouble()
            < single.GetProperty("offset").GetProperty("standardErrorCelsiusDifference").GetDouble());
        // Standing straighter from firing to firing is a drift, said before the mean of it.
        var firings = string.Join(',', new[] { 5.5, 5, 4, 3, 2, 1 }.Select(hand => FormattableString.Invariant(
            $$$"""{"units":"C","segments":[{"rate":60,"target":1222}],"observations":[{"cone":"6","clock":{{{hand}}}}]}""")));
        using var six = await api.Post("/v1/heat-work/compare", $$"""{"firings":[{{firings}}]}""");
        var trend = (await Support.Api.Read(six, 200)).GetProperty("trend");
        Assert.True(trend.GetProperty("drifts").GetBoolean());
        Assert.Equal(
            1.8 * trend.GetProperty("changeCelsiusDifference").GetDouble(),
            trend.GetProperty("changeFahrenheitDifference").GetDouble(), 0.001);
        using var none = await api.Post("/v1/heat-work/compare", Programme);
        await Problems.Findings(none, 400, "observation-unreadable");
    }

    [Theory]
    [InlineData("/v1/heat-work", Programme)]
    [InlineData("/v1/heat-work/solve", """{"units":"C","segments":[{"rate":60,"target":1250}],"cone":"6","find":"hold"}""")]
    [InlineData(
        "/v1/heat-work/compare",
        """{"units":"C","segments":[{"rate":60,"target":1222}],"observations":[{"cone":"6","look":"down"}]}""")]
    public async Task An_answer_is_what_the_document_says_and_a_figure_comes_with_it(string url, string body)
    {
        using var response = await api.Post(url, body);
        var document = OpenApiDocumentFile.Committed;
        Assert.Empty(document.Departures(
            await Support.Api.Read(response, 200), document.ResponseSchema(url, "post", "200", "application/json")));
        using var figure = await api.Post(url, body, accept: "image/svg+xml");
        Assert.Equal("svg", XDocument.Parse(await figure.Content.ReadAsStringAsync(Support.Api.Cancel)).Root!.Name.LocalName);
        using var wrong = await api.Post(url, body, "application/xml");
        await Problems.Findings(wrong, 415, "content-type-unsupported");
    }

    private async Task<HttpResponseMessage> Upload(string file, string query = "")
    {
        var content = new ByteArrayContent(
            await File.ReadAllBytesAsync(Path.Combine(Repository.Root, "samples", file), Support.Api.Cancel));
        content.Headers.ContentType = MediaTypeHeaderValue.Parse("text/csv");
        return await api.Send(HttpMethod.Post, "/v1/heat-work" + query, content);
    }
}
