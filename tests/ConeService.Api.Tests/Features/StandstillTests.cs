using System.Text.Json;

namespace ConeService.Api.Tests.Features;

/// <summary>A rate at which nothing moves makes a programme that outlasts its clock: it is refused by name wherever one is sent.</summary>
public class StandstillTests(Support.Api api)
{
    [Theory]
    [InlineData("/v1/heat-work/solve", """{"units":"C","cone":"6","find":"peak","segments":[{"rate":5e-324,"target":1000},{"rate":60}]}""")]
    [InlineData("/v1/heat-work/solve", """
        {"units":"C","cone":"6","find":"hold","segments":[{"rate":1e-20,"target":1000},{"rate":60,"target":1200}]}
        """)]
    [InlineData("/v1/heat-work", """{"units":"C","segments":[{"rate":-1e-20,"target":-20},{"rate":60,"target":1200}]}""")]
    [InlineData("/v1/heat-work", """{"units":"F","segments":[{"rate":0.0017,"target":1800},{"rate":108,"target":2200}]}""")]
    public async Task A_segment_that_does_not_move_is_refused(string url, string body)
    {
        var finding = await Refused(url, body);
        Assert.Equal("/segments/0/rate", finding.GetProperty("pointer").GetString());
        Assert.NotEqual("0", finding.GetProperty("value").GetString());
    }

    [Theory]
    [InlineData("coolingRate", "1e-9")]
    [InlineData("fullSpeedRate", "1e-300")]
    public async Task So_is_a_cooling_that_does_not_cool(string member, string rate)
    {
        var finding = await Refused("/v1/heat-work", $$"""{"units":"C","segments":[{"target":1200}],"{{member}}":{{rate}}}""");
        Assert.Equal("/" + member, finding.GetProperty("pointer").GetString());
    }

    // 0.0017 °F/h is no rate, and would look like one beside “0.001” alone.
    [Fact]
    public async Task What_is_allowed_is_told_in_both_units()
    {
        var finding = await Refused("/v1/heat-work", """{"units":"F","segments":[{"rate":0.0017,"target":1800}]}""");
        Assert.Equal("0.001 to 3,000 °C/h (0.0018 to 5,400 °F/h)", finding.GetProperty("allowed")[0].GetString());
    }

    [Fact]
    public async Task The_slowest_rate_is_taken()
    {
        using var response = await api.Post(
            "/v1/heat-work", """{"units":"C","start":20,"segments":[{"rate":0.001,"target":21},{"rate":60,"target":1222}]}""");
        await Support.Api.Read(response, 200);
    }

    private async Task<JsonElement> Refused(string url, string body)
    {
        using var response = await api.Post(url, body);
        var problem = await Support.Api.Read(response, 400);
        var finding = Assert.Single(problem.GetProperty("errors").EnumerateArray());
        Assert.Equal("rate-imperceptible", finding.GetProperty("code").GetString());
        return finding;
    }
}
