using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

/// <summary>A path that is not there leads to the one that was meant, when it is within a third of the letters.</summary>
public class NearPathTests(Support.Api api)
{
    [Theory]
    [InlineData("/v1/claybodies", "/v1/clay-bodies")]
    [InlineData("/v1/clay-body/red-earthenware", "/v1/clay-bodies/red-earthenware")]
    [InlineData("/v1/cone/6/endpoint", "/v1/cones/6/end-point")]
    [InlineData("/V1/Colourants", "/v1/colorants")]
    [InlineData("/cones/6", "/v1/cones/6")]
    [InlineData("/problem/cone-zero", "/problems/cone-zero")]
    [InlineData("/v1/charts/witness-self-supporting/cells/06", "/v1/charts/witness-self-supporting/cells/06@60")]
    [InlineData("/v1/charts/witness-self-supporting/cells/06@", "/v1/charts/witness-self-supporting/cells/06@60")]
    [InlineData("/v1/charts/witness-self-supporting/cells/@60", "/v1/charts/witness-self-supporting/cells/06@60")]
    public async Task A_misspelt_path_leads_to_the_one_meant(string asked, string meant)
    {
        using var response = await api.Get(asked);
        var finding = Assert.Single(await Problems.Findings(response, 404, "not-found"));
        Assert.Equal(meant, finding.GetProperty("allowed")[0].GetString());
        Assert.Equal($"Probably {meant}.", finding.GetProperty("likelyMistake").GetString());
    }

    // foo is three letters, two of them not those of wood.
    [Theory]
    [InlineData("/v1/schedules?firingKind=foo", null)]
    [InlineData("/v1/schedules?firingKind=glaz", "Probably glaze.")]
    [InlineData("/v1/schedules?atmosphere=oxydation", "Probably oxidation.")]
    public async Task A_word_that_is_like_none_is_not_guessed_at(string url, string? mistake)
    {
        using var response = await api.Get(url);
        var finding = Assert.Single(await Problems.Findings(response, 400, "word-unknown"));
        Assert.Equal(mistake, finding.GetProperty("likelyMistake").GetString());
    }

    [Theory]
    [InlineData("/v1/nothing")]
    [InlineData("/nothing")]
    [InlineData("/v1/cones/6/end-point/more")]
    [InlineData("/wp-login.php")]
    public async Task What_is_like_nothing_leads_nowhere(string asked)
    {
        using var response = await api.Get(asked);
        var finding = Assert.Single(await Problems.Findings(response, 404, "not-found"));
        Assert.Equal(["/openapi/v1.json lists every address"], finding.GetProperty("allowed").Strings());
        Assert.Null(finding.GetProperty("likelyMistake").GetString());
    }
}
