using System.Globalization;
using System.Text.Json;

namespace ConeService.Api.Tests.Browser;

/// <summary>The calendar of a firing, read by two other programs, over both changes of clocks.</summary>
public sealed class CalendarTests(Support.Api api, Chromium chromium) : IClassFixture<Chromium>
{
    // ical.js knows no zones but those that the file brings, so that its VTIMEZONE is what is tried.
    private const string Read = """
        (async () => {
          const ICAL = (await import('data:text/javascript;base64,' + window.library)).default;
          const calendar = new ICAL.Component(ICAL.parse(window.calendar));
          for (const zone of calendar.getAllSubcomponents('vtimezone')) ICAL.TimezoneService.register(zone);
          return calendar.getAllSubcomponents('vevent').map(c => {
            const e = new ICAL.Event(c);
            return [e.summary.split(':')[0], e.startDate.toUnixTime() / 60, e.endDate.toUnixTime() / 60,
              c.getAllSubcomponents('valarm').length, c.getFirstPropertyValue('transp')].join('|');
          });
        })()
        """;

    // The clocks of Berlin change on 29 March and 25 October 2026 at 1:00 UTC (Directive 2000/84/EC), those of New York on 8 March and
    // 1 November 2026 at 2:00 local time (15 U.S.C. 260a). Offsets before and after, h.
    [Theory]
    [InlineData("Europe/Berlin", "2026-03-28T18:00:00", 1, 2)]
    [InlineData("Europe/Berlin", "2026-10-24T18:00:00", 2, 1)]
    [InlineData("America/New_York", "2026-03-07T18:00:00", -5, -4)]
    [InlineData("America/New_York", "2026-10-31T18:00:00", -4, -5)]
    [InlineData("Europe/Berlin", "2026-06-05T09:00:00", 2, 2)]
    public async Task Both_readers_find_the_moments_over_a_change_of_clocks(string zone, string start, int before, int after)
    {
        var body = $$$"""
            {"cone":"06","units":"C","start":"{{{start}}}","timeZone":"{{{zone}}}",
             "kiln":{"id":"Otto","heat":"electric","volumeLitres":150,"kilowatts":12}}
            """;
        using var answered = await api.Post("/v1/schedules/bisque-careful/fit", body);
        var times = (await Support.Api.Read(answered, 200)).GetProperty("times");
        var begin = new DateTimeOffset(DateTime.Parse(start, CultureInfo.InvariantCulture), TimeSpan.FromHours(before));
        Assert.Equal(begin, times.GetProperty("start").GetDateTimeOffset());
        Assert.Equal(TimeSpan.FromHours(before), times.GetProperty("start").GetDateTimeOffset().Offset);
        // The next morning: the clocks on the wall have changed.
        var end = times.GetProperty("end").GetDateTimeOffset();
        Assert.Equal(TimeSpan.FromHours(after), end.Offset);
        Assert.Equal(begin.AddMinutes(Math.Floor(times.GetProperty("endMinutes").GetDouble())), end);

        using var response = await api.Post("/v1/schedules/bisque-careful/fit", body, accept: "text/calendar");
        var text = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Contains("BEGIN:VTIMEZONE", text, StringComparison.Ordinal);
        var own = Ical.Net.Calendar.Load(text)!.Events
            .Select(e => string.Join('|', [
                e.Summary!.Split(':')[0], Minutes(e.Start!.AsUtc), Minutes(e.End!.AsUtc),
                e.Alarms.Count.ToString(CultureInfo.InvariantCulture), e.Transparency!])).Order(StringComparer.Ordinal).ToList();
        Assert.Contains($"Firing|{Minutes(begin.UtcDateTime)}|{Minutes(end.UtcDateTime)}|1|OPAQUE", own);

        var library = Convert.ToBase64String(System.Text.Encoding.UTF8.GetBytes(Chromium.Tool("ical.js/dist/ical.min.js")));
        var theirs = await chromium.Inspect("about:blank", async page =>
        {
            await page.EvaluateExpressionAsync($"window.library = '{library}'; window.calendar = {JsonSerializer.Serialize(text)}; 0");
            return await page.EvaluateExpressionAsync<string[]>(Read);
        });
        Assert.Equal(own, theirs.Order(StringComparer.Ordinal));
    }

    private static string Minutes(DateTime utc) => (utc - DateTime.UnixEpoch).TotalMinutes.ToString(CultureInfo.InvariantCulture);
}
