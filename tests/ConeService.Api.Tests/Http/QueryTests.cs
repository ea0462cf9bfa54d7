using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

/// <summary>What stands in a query is read or refused: an empty value, a second name and an unknown word become nothing.</summary>
public class QueryTests(Support.Api api)
{
    // A formula over an empty cell asks so; what came back would be taken for the answer at a rate.
    [Theory]
    [InlineData("/v1/cones/6/end-point.txt?rate=&unit=C", "rate")]
    [InlineData("/v1/cones/6/end-point.txt?rate=60C/h&unit=", "unit")]
    [InlineData("/v1/cones/6/end-point?chart=", "chart")]
    [InlineData("/v1/cones/6/end-point?chart=%20", "chart")]
    [InlineData("/v1/cones/6/end-point?rate", "rate")]
    [InlineData("/v1/temperatures/1222C/cone?rate=", "rate")]
    [InlineData("/v1/schedules?cone=", "cone")]
    [InlineData("/v1/schedules/mid-range-glaze?units=", "units")]
    [InlineData("/v1/schedules/mid-range-glaze/fit?cone=6&units=C&clockHand=", "clockHand")]
    [InlineData("/v1/clay-bodies?cone=", "cone")]
    [InlineData("/v1/glazes?atmosphere=", "atmosphere")]
    [InlineData("/v1/colours?colorant=copper&percent=", "percent")]
    [InlineData("/v1/cautions?stage=", "stage")]
    [InlineData("/v1/faults?stage=", "stage")]
    [InlineData("/v1/landmarks?phase=", "phase")]
    [InlineData("/v1/limits?substance=", "substance")]
    [InlineData("/v1/processes?kiln=", "kiln")]
    [InlineData("/v1/cone-facts?topic=", "topic")]
    [InlineData("/v1/questions?seed=", "seed")]
    [InlineData("/v1/dataset/changes?from=", "from")]
    [InlineData("/v1/search?q=", "q")]
    [InlineData("/v1/pairings/check?body=red-earthenware&cone=04&atmosphere=oxidation&firingKind=glaze&use=", "use")]
    [InlineData("/posters/chart?paper=", "paper")]
    public async Task An_empty_value_is_refused_and_never_becomes_the_usual_one(string url, string parameter)
    {
        using var response = await api.Get(url, "application/problem+json, */*;q=0.1");
        var finding = Assert.Single(await Problems.Findings(response, 400, "member-missing"));
        Assert.Equal(parameter, finding.Place());
    }

    [Theory]
    [InlineData("kind=zzz&firingKind=glaze", "repeated-parameter", "kind")]
    [InlineData("kind=bisque&firingKind=glaze", "repeated-parameter", "kind")]
    [InlineData("kind=zzz", "word-unknown", "kind")]
    [InlineData("firingKind=zzz", "word-unknown", "firingKind")]
    public async Task A_kind_of_firing_under_either_name_is_read_or_refused(string query, string code, string parameter)
    {
        using var response = await api.Get("/v1/pairings/check?body=mid-range-stoneware-light&cone=6&atmosphere=oxidation&" + query);
        var finding = Assert.Single(await Problems.Findings(response, 400, code));
        Assert.Equal(parameter, finding.Place());
    }

    [Fact]
    public async Task The_same_kind_under_both_names_is_one_kind() => Assert.Equal("accept", (await api.Json(
        "/v1/pairings/check?body=mid-range-stoneware-light&cone=6&atmosphere=oxidation&kind=glaze&firingKind=glaze"))
        .GetProperty("verdict").GetString());

    // A query has no pointers into a body.
    [Theory]
    [InlineData("/cards/schedule/mid-range-glaze?cone=06", "cone")]
    [InlineData("/cards/schedule/mid-range-glaze?unit=X", "unit")]
    [InlineData("/v1/schedules/mid-range-glaze/fit?cone=06&units=C", "cone")]
    [InlineData("/v1/schedules/mid-range-glaze?units=X", "units")]
    [InlineData("/v1/colours?colorant=nope", "colorant")]
    [InlineData("/v1/colours?colorant=copper&percent=x", "percent")]
    [InlineData("/v1/pairings/check?body=red-earthenware&cone=0&atmosphere=oxidation", "cone")]
    [InlineData("/v1/pairings/check?body=red-earthenware&cone=04&atmosphere=smoky", "atmosphere")]
    [InlineData("/figures/cone-0.svg", "figure")]
    [InlineData("/v1/questions?count=x", "count")]
    public async Task A_parameter_is_told_by_its_name(string url, string parameter)
    {
        using var response = await api.Get(url);
        var errors = (await Support.Api.Read(response, (int)response.StatusCode)).GetProperty("errors").EnumerateArray().ToList();
        Assert.True((int)response.StatusCode is 400 or 404);
        Assert.Contains(errors, e => e.Place() == parameter);
        Assert.All(errors, e => Assert.False(e.TryGetProperty("pointer", out _)));
    }

    // The decimal comma, the exponent: told for what they are, and not for a unit.
    [Theory]
    [InlineData("/v1/temperatures/1222,5C/cone", "Write 1222.5C.")]
    [InlineData("/v1/cones/6/end-point?rate=1,5C/h", "Write 1.5C/h.")]
    [InlineData("/v1/cones/6/end-point?rate=1e308C/h", "Write the number out, without an exponent")]
    [InlineData("/v1/cones/6/end-point?rate=6e1C/h", "Write the number out, without an exponent")]
    [InlineData("/v1/temperatures/1234567890123C/cone", "at most 12 digits")]
    public async Task A_number_that_is_written_otherwise_is_told_as_such(string url, string mistake)
    {
        using var response = await api.Get(url);
        var finding = (await Support.Api.Read(response, 400)).GetProperty("errors")[0];
        Assert.Contains(mistake, finding.GetProperty("likelyMistake").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("unit", finding.GetProperty("message").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_package_has_no_changes_since_itself()
    {
        var version = (await api.Json("/v1/dataset")).GetProperty("datasetVersion").GetString();
        var changes = await api.Json("/v1/dataset/changes?from=" + version);
        Assert.Empty(changes.GetProperty("items").EnumerateArray());
        Assert.Equal(version, changes.GetProperty("from").GetString());
    }
}
