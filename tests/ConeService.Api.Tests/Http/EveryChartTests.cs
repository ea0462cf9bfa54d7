using System.Globalization;
using System.Text.Json;

namespace ConeService.Api.Tests.Http;

/// <summary>Whatever chart is named, every address that takes one answers with one whole document of finite numbers, or refuses.</summary>
public class EveryChartTests(Support.Api api)
{
    private static readonly int[] Peaks = [400, 700, 1000, 1222, 1300];

    [Fact]
    public Task A_programme_is_followed() => Each((chart, _, peak) => api.Post("/v1/heat-work", $"{{{Firing(chart, peak)}}}"));

    [Fact]
    public Task A_log_is_followed() => Each((chart, _, peak) => api.Post("/v1/heat-work?chart=" + chart, Log(peak), "text/csv"));

    [Fact]
    public Task A_figure_is_drawn() => Each((chart, _, peak) =>
        api.Post("/v1/heat-work", $"{{{Firing(chart, peak)}}}", accept: "image/svg+xml"));

    [Theory]
    [InlineData("peak")]
    [InlineData("hold")]
    [InlineData("rate")]
    public Task A_firing_is_solved(string find) => Each((chart, cone, peak) => api.Post(
        "/v1/heat-work/solve", $$"""{ {{Firing(chart, peak)}},"cone":"{{cone}}","find":"{{find}}"}"""));

    [Fact]
    public Task Witness_cones_are_compared() => Each((chart, cone, peak) => api.Post(
        "/v1/heat-work/compare",
        $$"""{ {{Firing(chart, peak)}},"observations":[{"cone":"{{cone}}","clock":3},{"cone":"{{cone}}","look":"down"}]}"""));

    [Theory]
    [InlineData(null)]
    [InlineData("image/svg+xml")]
    public Task A_firing_under_way_is_foreseen(string? accept) => Each((chart, cone, peak) => api.Post(
        "/v1/heat-work/forecast",
        $$"""
        {"units":"C","chart":"{{chart}}","cone":"{{cone}}",
         "log":[{"minutes":0,"temperature":20},{"minutes":300,"temperature":{{peak - 60}}}],
         "segments":[{"rate":60,"target":{{peak}},"holdMinutes":10}]}
        """,
        accept: accept));

    [Fact]
    public Task Several_firings_are_compared() => Each((chart, cone, peak) => api.Post(
        "/v1/heat-work/compare", $$"""
            {"firings":[{{Seen(chart, cone, peak, "standing")}},{{Seen(chart, cone, peak, "started")}},
             {{Seen(chart, cone, peak - 30, "started")}},{{Seen(chart, cone, peak, "down")}}]}
            """));

    private static string Seen(string chart, string cone, int peak, string look) =>
        $$"""{ {{Firing(chart, peak)}},"observations":[{"cone":"{{cone}}","look":"{{look}}"}]}""";

    [Fact]
    public Task Conversions_are_made() => Each((chart, cone, peak) => api.Post(
        "/v1/conversions", $$"""
            {"lines":[{"cone":"{{cone}}","chart":"{{chart}}"},{"cone":"{{cone}}","rate":"60C/h","chart":"{{chart}}"},
             {"temperature":"{{peak}}C","chart":"{{chart}}"},{"temperature":"{{peak}}C","rate":"150C/h","chart":"{{chart}}"}]}
            """));

    [Theory]
    [InlineData("bisque-careful", null)]
    [InlineData("bisque-careful", "text/csv")]
    [InlineData("bisque-careful", "image/svg+xml")]
    public Task A_schedule_is_fitted(string schedule, string? accept) => Each((chart, cone, peak) => peak != Peaks[0] ? null : api.Post(
        $"/v1/schedules/{schedule}/fit", $$"""{"units":"C","chart":"{{chart}}","cone":"{{cone}}"}""", accept: accept));

    private static string Firing(string chart, int peak) => $$"""
        "units":"C","start":20,"chart":"{{chart}}","segments":[{"rate":60,"target":{{peak}},"holdMinutes":10}],"coolingRate":200
        """;

    private static string Log(int peak) => "minutes,temperature_c\n" + string.Concat(Enumerable.Range(0, 701)
        .Select(i => string.Create(CultureInfo.InvariantCulture, $"{i},{20 + ((peak - 20) * i / 700.0):0.###}\n")));

    private static IEnumerable<string> Texts(JsonElement list, string member) =>
        list.EnumerateArray().Select(e => e.GetProperty(member).GetString()!);

    private async Task Each(Func<string, string, int, Task<HttpResponseMessage>?> ask)
    {
        var answered = 0;
        foreach (var chart in Texts((await api.Json("/v1/charts")).GetProperty("items"), "id").ToList())
        {
            var cones = Texts((await api.Json("/v1/charts/" + chart)).GetProperty("endPoints"), "cone").Distinct().ToList();
            foreach (var (peak, cone) in Peaks.SelectMany(p => new[] { cones[0], cones[cones.Count / 2], cones[^1] }.Select(c => (p, c))))
            {
                if (ask(chart, cone, peak) is not { } asked) continue;
                using var response = await asked;
                var text = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
                var (status, place) = ((int)response.StatusCode, $"{chart}, cone {cone}, {peak} °C: {text}");
                Assert.True(status is 200 or (>= 400 and < 500), place);
                Assert.False(text.Contains("NaN", StringComparison.Ordinal) || text.Contains('\u221e', StringComparison.Ordinal), place);
                if (status == 200) answered++;
                if (response.Content.Headers.ContentType?.MediaType is "text/csv" or "image/svg+xml") continue;
                using var document = JsonDocument.Parse(text);
                Assert.True(Finite(document.RootElement), place);
            }
        }

        Assert.True(answered > 0);
    }

    private static bool Finite(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().All(m => Finite(m.Value)),
        JsonValueKind.Array => element.EnumerateArray().All(Finite),
        JsonValueKind.Number => double.IsFinite(element.GetDouble()),
        _ => true,
    };
}
