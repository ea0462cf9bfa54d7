using System.Text.Json;
using System.Text.RegularExpressions;

namespace ConeService.Api.Tests.Features;

/// <summary>What a keeper loads and fires by: notes beside the ware, and who must be there when.</summary>
public sealed class PlanListTests(Support.Api api)
{
    private const string Gas = """
        {"horizon":{"from":"2026-12-01T00:00","to":"2026-12-12T00:00"},"timeZone":"Europe/Berlin",
        "kilns":[{"kiln":{"id":"Gas","heat":"gas","maxCone":"12","atmospheres":["oxidation","reduction"],
        "interior":{"heightMillimetres":700,"widthMillimetres":600,"depthMillimetres":600}},
        "firings":[{"firingKind":"glaze","cone":"10","atmosphere":"reduction"}]}],
        "pieces":[{"piece":{"id":"jars","count":30,"body":"high-fire-stoneware-light","state":"bisqued","coats":[{"glaze":"tenmoku"}],
        "size":{"heightMillimetres":150,"widthMillimetres":130}},"due":"2026-12-10T12:00"}],
        "staffed":[{"from":"2026-12-01T09:00","to":"2026-12-01T18:00"},{"from":"2026-12-03T09:00","to":"2026-12-03T18:00"}]}
        """;

    [Fact]
    public async Task The_list_has_the_note_once_and_by_its_number_after_that_and_the_flame_that_nobody_minds()
    {
        using var response = await api.Post("/v1/plans?seconds=0.5", Gas, accept: "text/html");
        var html = await response.Content.ReadAsStringAsync(Support.Api.Cancel);

        // Jars of three shelves.
        Assert.Single(Words(html, "cookie or catcher"));
        Assert.Equal(2, Words(html, "See note 1").Count);
        Assert.NotEmpty(Words(html, "live flame, nobody there for"));
        Assert.NotEmpty(Words(html, "Live flame with nobody there: firing 1"));
        Assert.NotEmpty(Words(html, "peak of <b>1</b>, about"));
        Assert.NotEmpty(Words(html, "<dt>Peak, about</dt>"));
        Assert.NotEmpty(Words(html, "Never left to a shut-off alone"));
    }

    // The very hours: whoever prints the sheet of a firing reads there what the plan says.
    [Theory]
    [InlineData(24)]
    [InlineData(0)]
    public async Task The_sheet_behind_a_firing_has_its_hours(int wall)
    {
        var thick = wall == 0 ? "" : $"\"thickestMillimetres\":{wall},";
        using var response = await api.Post("/v1/plans?seconds=0.5", $$$"""
            {"horizon":{"from":"2026-12-01T00:00","to":"2026-12-08T00:00"},"timeZone":"Europe/Berlin","kilns":[{"kiln":{"id":"K",
            "heat":"electric","maxCone":"8","controllerSegments":8,"wall":{"thicknessMillimetres":76},
            "interior":{"heightMillimetres":640,"diameterMillimetres":560}},
            "loadingMinutes":90,"firings":[{"firingKind":"bisque","cone":"06","atmosphere":"oxidation"}]}],"pieces":[{"piece":{"id":"head",
            "body":"sculpture-body","state":"bone-dry",{{{thick}}}"size":{"heightMillimetres":300,"widthMillimetres":200}},
            "due":"2026-12-07T12:00"}]}
            """);
        using var plan = JsonDocument.Parse(await response.Content.ReadAsStringAsync(Support.Api.Cancel));
        var firing = plan.RootElement.GetProperty("firings")[0];
        using var fit = await api.Get(firing.GetProperty("fittedSchedule").GetString()!);
        using var sheet = JsonDocument.Parse(await fit.Content.ReadAsStringAsync(Support.Api.Cancel));
        var times = sheet.RootElement.GetProperty("times");

        DateTimeOffset Of(JsonElement of, string name) => of.GetProperty(name).GetDateTimeOffset();
        Assert.Equal(Of(firing, "loadingFrom"), Of(times, "loading"));
        Assert.InRange((Of(firing, "openingFrom") - Of(times, "opening")).TotalMinutes, 0, 1);
        Assert.InRange((Of(firing, "peak") - Of(times, "peak")).TotalMinutes, -1, 1);
        Assert.Equal(
            sheet.RootElement.GetProperty("operation").GetProperty("attendance").EnumerateArray()
                .Select(a => a.GetProperty("message").GetString()),
            firing.GetProperty("attendance").EnumerateArray().Select(a => a.GetProperty("message").GetString()));
    }

    private static MatchCollection Words(string html, string words) => Regex.Matches(html, Regex.Escape(words));
}
