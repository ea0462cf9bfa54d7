using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

/// <summary>An address pinned to a data package never changes its answer, so it may be kept for ever (RFC 8246).</summary>
public class PinnedDatasetTests(Support.Api api)
{
    [Theory]
    [InlineData("/v1/cones/6?")]
    [InlineData("/v1/charts?")]
    [InlineData("/v1/charts.html?")]
    [InlineData("/v1/colours?")]
    [InlineData("/v1/cones/6/end-point.txt?rate=60C/h&unit=C&")]
    [InlineData("/v1/clay-bodies?cone=6&")]
    [InlineData("/v1/dataset?")]
    [InlineData("/cards/cone-6?")]
    public async Task The_version_served_answers_as_usual_and_for_ever(string url)
    {
        var version = await Version();
        using var usual = await api.Get(url.TrimEnd('?', '&'));
        using var pinned = await api.Get($"{url}dataset={version}");
        Assert.Equal(200, (int)pinned.StatusCode);
        Assert.Equal("public, max-age=31536000, immutable", Assert.Single(pinned.Headers.GetValues("Cache-Control")));
        Assert.Equal("public, max-age=300", Assert.Single(usual.Headers.GetValues("Cache-Control")));
        // A pinned card leads to pinned cards and to a pinned frame, and says nothing else.
        var told = await pinned.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Equal(
            await usual.Content.ReadAsStringAsync(Support.Api.Cancel),
            told.Replace($"%3Fdataset%3D{version}", "", StringComparison.Ordinal)
                .Replace($"?dataset={version}", "", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("0.9.0")]
    [InlineData("")]
    public async Task Another_version_is_not_answered_and_the_one_served_is_named(string asked)
    {
        using var response = await api.Get($"/v1/cones/6?dataset={asked}");
        var finding = Assert.Single(await Problems.Findings(response, 409, "dataset-not-served"));
        Assert.Equal(asked, finding.GetProperty("value").GetString());
        Assert.Equal([await Version()], finding.GetProperty("allowed").Strings());
    }

    // Parameters that go with an uploaded log are refused beside JSON; the pin is none of them.
    [Fact]
    public async Task A_programme_as_json_may_be_pinned()
    {
        using var served = await api.Post(
            $"/v1/heat-work?dataset={await Version()}", """{"units":"C","start":20,"segments":[{"rate":60,"target":1222}]}""");
        Assert.Equal("6", (await Support.Api.Read(served, 200)).GetProperty("reached").GetString());
    }

    [Fact]
    public async Task A_post_is_pinned_too()
    {
        using var served = await api.Post($"/v1/conversions?dataset={await Version()}", """{"lines":[{"cone":"6"}]}""");
        Assert.Equal(200, (int)served.StatusCode);
        using var other = await api.Post("/v1/conversions?dataset=0.9.0", """{"lines":[{"cone":"6"}]}""");
        await Problems.Findings(other, 409, "dataset-not-served");
    }

    // The help of a problem, the probes and the index rest on no data package.
    [Theory]
    [InlineData("/problems/cone-zero")]
    [InlineData("/health/ready")]
    [InlineData("/v1")]
    [InlineData("/")]
    public async Task What_rests_on_no_data_can_not_be_pinned(string url)
    {
        using var response = await api.Get(url + "?dataset=1.5.0");
        await Problems.Findings(response, 400, "unknown-parameter");
    }

    [Fact]
    public async Task A_misspelt_pin_is_refused()
    {
        using var response = await api.Get("/v1/cones/6?datset=1.5.0");
        var finding = Assert.Single(await Problems.Findings(response, 400, "unknown-parameter"));
        Assert.Equal("Probably dataset.", finding.GetProperty("likelyMistake").GetString());
    }

    [Fact]
    public async Task A_package_with_an_overlay_is_pinned_by_its_whole_version()
    {
        using var overlay = new Overlay("workshop").With("messages", "http.one-value,anyone,de,ein Wert");
        using var host = new OwnHost(null, overlay.Directory);
        using var answer = await host.Ask("/v1/dataset", null);
        var version = (await Support.Api.Read(answer, 200)).GetProperty("datasetVersion").GetString()!;
        Assert.Contains('+', version);
        foreach (var spelling in new[] { version, Uri.EscapeDataString(version) })
        {
            using var pinned = await host.Ask($"/v1/cones/6?dataset={spelling}", null);
            Assert.Equal(200, (int)pinned.StatusCode);
        }

        using var bare = await host.Ask($"/v1/cones/6?dataset={version.Split('+')[0]}", null);
        Assert.Equal(409, (int)bare.StatusCode);
    }

    private async Task<string> Version() => (await api.Json("/v1/dataset")).GetProperty("datasetVersion").GetString()!;
}
