using System.Text.Json;
using System.Xml.Linq;

namespace ConeService.Api.Tests.Features;

public class ForecastTests(Support.Api api)
{
    private const string Route = "/v1/heat-work/forecast";

    // 150 °C/h to 1100 °C, then 60 °C/h to 1150 °C, at 08:00 + 7:12 + 0:50; the rest is 72 °C at 60 °C/h and ten minutes.
    private const string Climbing = """
        "units":"C","cone":"6",
        "log":[{"minutes":0,"temperature":20},{"minutes":432,"temperature":1100},{"minutes":457,"temperature":1125},
               {"minutes":482,"temperature":1150}],
        "segments":[{"rate":60,"target":1222,"holdMinutes":10}]
        """;

    private const string Started = "{" + Climbing + ""","start":"2026-12-04T08:00:00+01:00"}""";

    [Fact]
    public async Task A_kiln_that_follows_ends_when_the_programme_does()
    {
        var answer = await Ask(Started);
        // 72 °C at 60 °C/h are 72 minutes; 482 + 72 + 10 minutes after 08:00 are 17:24.
        Assert.Equal(82, answer.GetProperty("end").GetProperty("remainingMinutes").GetDouble());
        Assert.Equal("2026-12-04T17:24:00+01:00", answer.GetProperty("end").GetProperty("at").GetString());
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("kiln").ValueKind);
        // Printed: cone 6 ends at 1222 °C after 60 °C/h, so it is down before the hold is over.
        Assert.True(answer.GetProperty("target").GetProperty("probabilityDown").GetDouble() > 0.5);
        Assert.Equal("6", answer.GetProperty("heatWork").GetProperty("reached").GetString());
        Assert.Equal("estimate", answer.GetProperty("confidence").GetString());
        var assumed = answer.GetProperty("assumed").EnumerateArray().Select(a => a.GetProperty("pointer").GetString()).ToList();
        foreach (var left in new[] { "/kiln", "/naturalCooling", "/chart", "/thermocouple/type" }) Assert.Contains(left, assumed);
    }

    [Fact]
    public async Task The_advised_programme_after_the_log_puts_the_cone_just_down_by_heat_work_itself()
    {
        var longer = Climbing.Replace("\"holdMinutes\":10", "\"holdMinutes\":90", StringComparison.Ordinal);
        var question = "{" + longer + ""","coolingRate":200}""";
        var option = (await Ask(question)).GetProperty("advice").GetProperty("options")[0];
        var programme = option.GetProperty("programme");
        var body = $$"""
            {"units":"C","start":20,"coolingRate":200,"segments":[{"rate":150,"target":1100},{"rate":60,"target":1150},
             {{string.Join(',', programme.GetProperty("segments").EnumerateArray().Select(s => s.GetRawText()))}}]}
            """;
        using var response = await api.Post("/v1/heat-work", body);
        var cone = (await Support.Api.Read(response, 200)).GetProperty("cones").EnumerateArray()
            .Single(c => c.GetProperty("cone").GetString() == "6");
        Assert.Equal(1, cone.GetProperty("progress").GetDouble(), 0.05);
        Assert.Equal(cone.GetProperty("progress").GetDouble(), option.GetProperty("targetProgress").GetDouble(), 0.001);
    }

    private const string Csv = "minutes,temp_c\n0,20\n432,1100\n457,1125\n482,1150\n";

    // The same log, as CSV with the rest in the query and as JSON.
    [Fact]
    public async Task A_log_as_csv_with_the_rest_in_the_query_is_answered_as_JSON_is()
    {
        const string query = "?units=C&cone=6&segments=60,1222,10&start=2026-12-04T08:00:00%2B01:00";
        using var response = await api.Post(Route + query, Csv, "text/csv");
        var (uploaded, sent) = (await Support.Api.Read(response, 200), await Ask(Started));
        foreach (var member in new[] { "end", "opening", "target", "now", "advice", "lines", "targetProgressSpan" })
            Assert.True(JsonElement.DeepEquals(sent.GetProperty(member), uploaded.GetProperty(member)), member);
        var assumed = uploaded.GetProperty("assumed").EnumerateArray().ToList();
        Assert.All(assumed, a => Assert.False(a.TryGetProperty("pointer", out _)));
        Assert.Contains("thermocoupleType", assumed.Select(a => a.GetProperty("parameter").GetString()));
        using var phone = await api.Post(Route + ".txt" + query, Csv, "text/csv");
        Assert.Equal("text/plain", phone.Content.Headers.ContentType?.MediaType);
    }

    [Theory]
    [InlineData("?units=C", "member-missing", "cone")]
    [InlineData("?units=C&cone=06x", "", "cone")]
    [InlineData("?cone=6", "", "units")]
    [InlineData("?units=K&cone=6", "units-unknown", "units")]
    [InlineData("?units=C&cone=6&segments=60", "number-out-of-range", "segments")]
    [InlineData("?units=C&cone=6&segments=60,twelve", "number-out-of-range", "segments")]
    [InlineData("?units=C&cone=6&segments=60,99999", "", "segments")]
    [InlineData("?units=C&cone=6&coolingRate=fast", "number-out-of-range", "coolingRate")]
    [InlineData("?units=C&cone=6&chart=none", "", "chart")]
    [InlineData("?units=C&cone=6&thermocoupleType=Z", "", "thermocoupleType")]
    [InlineData("?units=C&cone=6&start=tomorrow", "", "start")]
    public async Task What_is_wrong_with_an_upload_is_named_by_its_parameter(string query, string code, string parameter)
    {
        using var response = await api.Post(Route + query, Csv, "text/csv");
        var finding = (await Support.Api.Read(response, 400)).GetProperty("errors")[0];
        if (code.Length > 0) Assert.Equal(code, finding.GetProperty("code").GetString());
        Assert.Equal(parameter, finding.GetProperty("parameter").GetString());
    }

    [Fact]
    public async Task A_log_of_several_thermocouples_asks_for_one_and_parameters_stay_with_csv()
    {
        const string two = "minutes,top C,bottom C\n0,20,20\n432,1100,1095\n457,1125,1119\n482,1150,1143\n";
        using var several = await api.Post(Route + "?units=C&cone=6", two, "text/csv");
        var finding = (await Support.Api.Read(several, 400)).GetProperty("errors")[0];
        Assert.Equal("csv-headers", finding.GetProperty("code").GetString());
        using var one = await api.Post(Route + "?units=C&cone=6&temperatureColumn=bottom%20C", two, "text/csv");
        Assert.Equal(1143, (await Support.Api.Read(one, 200)).GetProperty("now").GetProperty("celsius").GetDouble());
        using var both = await api.Post(Route + "?cone=6", Started);
        Assert.Equal(400, (int)both.StatusCode);
    }

    [Fact]
    public async Task On_a_phone_it_is_three_lines()
    {
        using var response = await api.Post(Route + ".txt", Started);
        Assert.Equal("text/plain", response.Content.Headers.ContentType?.MediaType);
        var lines = (await response.Content.ReadAsStringAsync(Support.Api.Cancel)).TrimEnd('\n').Split('\n');
        Assert.Equal(3, lines.Length);
        Assert.StartsWith("Ends in 1 h 22 min", lines[0], StringComparison.Ordinal);
        Assert.Contains("4 Dec 17:24", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("Cone 6 will be down with a probability of", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("Below 95 °C (203 °F) in", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_figure_has_the_log_solid_and_the_forecast_dashed()
    {
        using var response = await api.Post(Route + ".svg", Started);
        var figure = XDocument.Parse(await response.Content.ReadAsStringAsync(Support.Api.Cancel));
        var paths = figure.Descendants().Where(e => e.Name.LocalName == "path").ToList();
        var log = Assert.Single(paths, p => (string?)p.Attribute("class") == "t");
        var ahead = Assert.Single(paths, p => (string?)p.Attribute("class") == "t f");
        // The one begins where the other ends.
        Assert.Equal(((string)log.Attribute("d")!).Split('L')[^1], ((string)ahead.Attribute("d")!).Split('L')[0][1..]);
        Assert.Contains("stroke-dasharray", figure.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_calendar_has_the_end_and_the_opening_as_spans()
    {
        using var response = await api.Post(Route + ".ics", Started);
        Assert.Equal("text/calendar", response.Content.Headers.ContentType?.MediaType);
        var events = Ical.Net.Calendar.Load(await response.Content.ReadAsStringAsync(Support.Api.Cancel))!.Events.ToList();
        Assert.Equal(2, events.Count);
        Assert.Equal(new DateTime(2026, 12, 4, 16, 24, 0, DateTimeKind.Utc), events[0].Start!.AsUtc);
        Assert.All(events, e => Assert.True(e.End!.AsUtc > e.Start!.AsUtc));
        Assert.Equal(2, events.Select(e => e.Uid).Distinct().Count());
    }

    [Fact]
    public async Task A_calendar_without_a_start_is_refused()
    {
        using var response = await api.Post(Route + ".ics", "{" + Climbing + "}");
        var error = (await Support.Api.Read(response, 400)).GetProperty("errors")[0];
        Assert.Equal("/start", error.GetProperty("pointer").GetString());
    }

    [Theory]
    [InlineData("""{"units":"C","cone":"6"}""", "/log")]
    [InlineData("""{"units":"C","log":[{"minutes":0,"temperature":20},{"minutes":60,"temperature":90}]}""", "/cone")]
    [InlineData("{" + Climbing + ""","kiln":{"heat":"electric","volumeLitres":70},"coolingRate":200}""", "/coolingRate")]
    [InlineData("{" + Climbing + ""","kiln":{"heat":"electric"}}""", "/kiln/volumeLitres")]
    [InlineData("{" + Climbing + ""","kiln":{"heat":"electric","volumeLitres":70,"thermocouple":{"type":"Q"}}}""", "/kiln/thermocouple")]
    [InlineData("{" + Climbing + ""","load":{"dryness":"damp"}}""", "/load/dryness")]
    [InlineData("{" + Climbing + ""","start":"tomorrow"}""", "/start")]
    [InlineData(
        """
        {"units":"C","cone":"6","log":[{"minutes":0,"temperature":20},{"minutes":60,"temperature":90}],"segments":[{"rate":60,"target":10}],
         "kiln":{"heat":"electric","volumeLitres":70}}
        """, "/segments/0/target")]
    public async Task What_is_wrong_is_named(string body, string pointer)
    {
        using var response = await api.Post(Route, body);
        var errors = (await Support.Api.Read(response, 400)).GetProperty("errors").EnumerateArray().ToList();
        Assert.Contains(errors, e => e.GetProperty("pointer").GetString() == pointer);
    }

    // 2 kW are less than half of what 70 L usually have.
    [Fact]
    public async Task A_kiln_that_cannot_finish_is_said_to()
    {
        var answer = await Ask("{" + Climbing + ""","kiln":{"heat":"electric","volumeLitres":70,"kilowatts":2}}""");
        // The log shows that there is more power than was stated: what it did, the kiln can do.
        Assert.True(answer.GetProperty("kiln").GetProperty("calibration").GetProperty("powerFactor").GetDouble() > 1.2);
        var weak = await Ask("""
            {"units":"C","cone":"6","log":[{"minutes":0,"temperature":20},{"minutes":10,"temperature":21}],
             "segments":[{"rate":100,"target":1222}],"kiln":{"heat":"electric","volumeLitres":70,"kilowatts":2}}
            """);
        Assert.False(weak.GetProperty("kiln").GetProperty("finishes").GetBoolean());
        Assert.Contains(weak.GetProperty("warnings").EnumerateArray(), w => w.GetProperty("code").GetString() == "kiln-stalls");
        Assert.Equal("out-of-reach", weak.GetProperty("advice").GetProperty("verdict").GetString());
        Assert.StartsWith("The kiln gives up in", weak.GetProperty("lines")[0].GetString(), StringComparison.Ordinal);
    }

    // Work is bounded whatever is sent: the most segments that are taken, with a kiln.
    [Fact]
    public async Task The_most_segments_are_answered()
    {
        var segments = string.Join(',', Enumerable.Range(0, 10_000).Select(i => $$"""{"rate":60,"target":{{1150 + (i % 2)}}}"""));
        var answer = await Ask("{" + Climbing.Replace("""{"rate":60,"target":1222,"holdMinutes":10}""", segments, StringComparison.Ordinal)
            + ""","kiln":{"heat":"electric","volumeLitres":70,"kilowatts":8}}""");
        Assert.Equal(10_000, answer.GetProperty("kiln").GetProperty("segments").GetArrayLength());
    }

    private async Task<JsonElement> Ask(string body)
    {
        using var response = await api.Post(Route, body);
        return await Support.Api.Read(response, 200);
    }
}
