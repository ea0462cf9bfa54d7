using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using ConeService.Api.Features.Schedules;
using ConeService.Api.Tests.Support;
using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;

namespace ConeService.Api.Tests.Features;

/// <summary>A fit that stands in an address answers what its body would.</summary>
public class FitLinkTests(Support.Api api)
{
    private const string Address = "/v1/schedules/mid-range-glaze/fit";
    private const string Asked = "?cone=6&units=C&start=2026-12-07T05:00:00%2B01:00&heat=electric&volumeLitres=150&kilowatts=9"
        + "&wallThicknessMillimetres=114&kilnId=Otto&kilogramsWare=30&thickestMillimetres=8&glaze=dry&form=flat"
        + "&timeZone=Europe/Berlin&attendance=whole-firing&perKilowattHour=0.31&currency=EUR";

    private const string Body = """
        {"cone":"6","units":"C","start":"2026-12-07T05:00:00+01:00","timeZone":"Europe/Berlin","attendance":"whole-firing",
         "kiln":{"id":"Otto","heat":"electric","volumeLitres":150,"kilowatts":9,"wall":{"thicknessMillimetres":114}},
         "load":{"kilogramsWare":30,"thickestMillimetres":8,"glaze":"dry","form":"flat"},
         "tariff":{"perKilowattHour":0.31,"currency":"EUR"}}
        """;

    [Theory]
    [InlineData("application/json", ".json")]
    [InlineData("text/csv", ".csv")]
    [InlineData("image/svg+xml", ".svg")]
    [InlineData("text/html", ".html")]
    [InlineData("text/calendar", ".ics")]
    public async Task Every_form_of_a_link_is_that_of_its_body(string type, string suffix)
    {
        using var posted = await api.Post(Address, Body, accept: type);
        using var read = await api.Get(Address + Asked, type);
        using var suffixed = await api.Get(Address + suffix + Asked);
        Assert.Equal(HttpStatusCode.OK, posted.StatusCode);
        var told = Timeless(await posted.Content.ReadAsStringAsync(Support.Api.Cancel));
        Assert.Equal(told, Timeless(await read.Content.ReadAsStringAsync(Support.Api.Cancel)));
        Assert.Equal(told, Timeless(await suffixed.Content.ReadAsStringAsync(Support.Api.Cancel)));
        Assert.Equal(posted.Content.Headers.ContentType, read.Content.Headers.ContentType);
        Assert.NotNull(read.Headers.ETag);
        Assert.Null(posted.Headers.ETag);
    }

    // A member that is one word or one number can stand in a link, unless another stands there in its place.
    [Fact]
    public void No_plain_member_of_a_fit_is_forgotten_in_its_link()
    {
        string[] instead = ["finishBy", "startNotBefore", "elementFirings", "fuelFactor"];
        var plain = new[] { typeof(FitRequest), typeof(Kiln), typeof(FitLoad), typeof(FitTariff) }
            .SelectMany(t => t.GetProperties())
            .Where(p => p.PropertyType == typeof(string) || p.PropertyType == typeof(SentText) || p.PropertyType == typeof(double?))
            .Select(p => JsonNamingPolicy.CamelCase.ConvertName(p.Name))
            .Select(n => n == "id" ? "kilnId" : n);
        Assert.Empty(plain.Except(FitParameters.Names).Except(instead));
    }

    // An answer that anybody keeps is asked for again by its tag; a calendar too, though its entries carry the time of asking.
    [Theory]
    [InlineData(".json")]
    [InlineData(".ics")]
    public async Task A_link_that_is_asked_again_is_not_sent_again(string suffix)
    {
        using var first = await api.Get(Address + suffix + Asked);
        using var again = new HttpRequestMessage(HttpMethod.Get, Address + suffix + Asked);
        again.Headers.IfNoneMatch.Add(first.Headers.ETag!);
        await Task.Delay(TimeSpan.FromSeconds(1.1), Support.Api.Cancel);
        using var second = await api.Client.SendAsync(again, Support.Api.Cancel);
        Assert.Equal(HttpStatusCode.NotModified, second.StatusCode);
    }

    [Fact]
    public async Task An_offset_whose_plus_became_a_blank_is_understood()
    {
        using var lost = await api.Get(Address + Asked.Replace("%2B", "+", StringComparison.Ordinal));
        using var kept = await api.Get(Address + Asked);
        Assert.True(JsonNode.DeepEquals(
            JsonNode.Parse((await Support.Api.Read(kept, 200)).GetRawText()),
            JsonNode.Parse((await Support.Api.Read(lost, 200)).GetRawText())));
    }

    [Theory]
    [InlineData("?cone=6&units=C&heat=electric&volumeLitres=many", "volumeLitres", "number-expected")]
    [InlineData("?cone=6&units=C&heat=electrical&volumeLitres=100", "heat", "word-unknown")]
    [InlineData("?cone=6&units=C&volumeLitres=100", "heat", "member-missing")]
    [InlineData("?cone=6&units=C&heat=electric&volumeLitres=100&wallThicknessMillimetres=5", "wallThicknessMillimetres",
        "kiln-number-out-of-range")]
    [InlineData("?cone=6", "units", "member-missing")]
    [InlineData("?units=C", "cone", "member-missing")]
    [InlineData("?cone=6&units=C&finish=now", "finish", "unknown-parameter")]
    public async Task What_is_wrong_is_told_of_the_parameter(string query, string parameter, string code)
    {
        using var response = await api.Get(Address + query);
        var finding = Assert.Single(await Problems.Findings(response, 400, code));
        Assert.Equal(parameter, finding.GetProperty("parameter").GetString());
        Assert.False(finding.TryGetProperty("pointer", out _));
    }

    // A subscription reads what its address gives: events with a start, and no method, which only invitations have.
    [Fact]
    public async Task A_calendar_can_subscribe_to_a_link()
    {
        using var response = await api.Get(Address + ".ics" + Asked);
        var calendar = Ical.Net.Calendar.Load(await response.Content.ReadAsStringAsync(Support.Api.Cancel))!;
        Assert.True(string.IsNullOrEmpty(calendar.Method));
        Assert.Contains(calendar.Events, e => e.Summary!.StartsWith("Load", StringComparison.Ordinal));
        using var without = await api.Get(Address + ".ics?cone=6&units=C");
        Assert.Equal(
            "start", Assert.Single(await Problems.Findings(without, 400, "member-missing")).GetProperty("parameter").GetString());
    }

    // The host has a clock, and says that it took it.
    [Fact]
    public async Task A_start_is_chosen_from_now_on_when_nothing_is_said()
    {
        const string body = """
            {"cone":"6","units":"C","kiln":{"heat":"electric","volumeLitres":150},
             "tariff":{"perKilowattHour":0.36,"currency":"EUR","periods":[{"from":"22:00","to":"06:00","perKilowattHour":0.18}]}}
            """;
        using var response = await api.Post(Address, body);
        var fit = await Support.Api.Read(response, 200);
        var chosen = fit.GetProperty("startChosen");
        Assert.InRange(
            chosen.GetProperty("notBefore").GetDateTimeOffset() - TimeProvider.System.GetUtcNow(), TimeSpan.FromMinutes(-1),
            TimeSpan.FromMinutes(2));
        Assert.Equal(chosen.GetProperty("start").GetDateTimeOffset(), fit.GetProperty("times").GetProperty("start").GetDateTimeOffset());
        Assert.Contains(fit.GetProperty("assumed").EnumerateArray(), a => a.GetProperty("pointer").GetString() == "/startNotBefore");
    }

    private static string Timeless(string text) => string.Join(
        '\n', text.Split('\n').Where(l => !l.StartsWith("DTSTAMP", StringComparison.Ordinal)));
}
