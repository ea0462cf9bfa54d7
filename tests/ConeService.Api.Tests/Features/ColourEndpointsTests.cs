using System.Text.Json;
using ConeService.Api.Tests.Contract;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Features;

/// <summary>The questions of a teacher, and what goes wrong in asking them.</summary>
public class ColourEndpointsTests(Support.Api api)
{
    private const string Url = "/v1/colours/resolve";

    // Common practice, and pitelka-2001 with bloomfield-colour for the red.
    [Fact]
    public async Task Half_a_percent_of_copper_beside_tin_is_green_in_oxidation_and_red_in_reduction()
    {
        using var response = await api.Post(Url, """
            {"colorants":[{"colorant":"copper","percent":0.5}],"additives":[{"additive":"tin oxide","percent":1}],
            "base":"calcium","cone":"10"}
            """);
        var answer = await Support.Api.Read(response, 200);
        var contrast = answer.GetProperty("contrast");
        Assert.Contains("green", contrast.GetProperty("oxidation").GetProperty("colourWords").Strings());
        Assert.Equal(["red"], contrast.GetProperty("reduction").GetProperty("colourWords").Strings());
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("asked").ValueKind);
        Assert.Contains("leach test", answer.GetProperty("foodContact").GetString(), StringComparison.Ordinal);
        Assert.Contains("Local codes", answer.GetProperty("notices")[0].GetString(), StringComparison.Ordinal);
        Assert.All(
            answer.GetProperty("foodContactLimits").EnumerateArray(), l => Assert.NotEmpty(l.GetProperty("jurisdiction").GetString()!));
        var document = OpenApiDocumentFile.Committed;
        Assert.Empty(document.Departures(answer, document.ResponseSchema(Url, "post", "200", "application/json")));
    }

    // Common practice: a little iron is yellow in oxidation and green in reduction.
    [Fact]
    public async Task One_percent_of_iron_is_yellow_in_oxidation_and_green_in_reduction()
    {
        var answers = (await api.Json("/v1/colours?colorant=iron&percent=1&base=calcium&cone=10")).GetProperty("answers");
        Assert.Contains("yellow", answers[0].GetProperty("colourWords").Strings());
        Assert.Contains("green", answers[1].GetProperty("colourWords").Strings());
    }

    [Fact]
    public async Task Every_caution_that_an_answer_raises_can_be_followed()
    {
        var answer = await api.Json("/v1/colours?colorant=chromium&base=tin&cone=9&atmosphere=reduction&kiln=electric");
        foreach (var caution in answer.GetProperty("cautions").EnumerateArray())
        {
            var detail = await api.Json(caution.GetProperty("href").GetString()!);
            Assert.NotEmpty(detail.GetProperty("sources").Strings());
            Assert.Contains("Local codes", detail.GetProperty("notice").GetString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Salt_and_lustre_say_what_goes_in_and_who_is_hurt()
    {
        // Salt starts when cone 8 falls, at about 1250 °C: 1250 x 1.8 + 32 = 2282 °F.
        var salt = await api.Json("/v1/processes/salt");
        Assert.Contains("hydrogen-chloride-from-salt", Cautions(salt));
        Assert.Contains(
            salt.GetProperty("addedMaterials").EnumerateArray(),
            m => m.GetProperty("temperatureFahrenheit") is { ValueKind: JsonValueKind.Object } f
                && f.GetProperty("min").GetDecimal() == 2282m);
        var lustre = await api.Json("/v1/processes/lustre");
        Assert.Equal("not-for-food", lustre.GetProperty("foodContact").GetProperty("verdict").GetString());
        Assert.Contains("lustre-solvents", Cautions(lustre));
    }

    private static IEnumerable<string?> Cautions(JsonElement answer) =>
        answer.GetProperty("cautions").EnumerateArray().Select(c => c.GetProperty("id").GetString());

    [Theory]
    [InlineData("colorant=coper", "colorant-unknown", "colorant")]
    [InlineData("colorant=copper&base=calcum", "base-unknown", "base")]
    [InlineData("colorant=copper&percent=-1", "percent-out-of-range", "percent")]
    [InlineData("colorant=copper&percent=101", "percent-out-of-range", "percent")]
    [InlineData("colorant=copper&percent=0,5", "percent-unreadable", "percent")]
    [InlineData("percent=3", "member-missing", "colorant")]
    [InlineData("colorant=copper&cone=0", "cone-zero", "cone")]
    [InlineData("colorant=copper&atmosphere=blue", "atmosphere-unknown", "atmosphere")]
    [InlineData("colorant=copper&kiln=steam", "kiln-unknown", "kiln")]
    [InlineData("colour=greeen", "colour-unknown", "colour")]
    [InlineData("colourant=copper", "unknown-parameter", "colourant")]
    public async Task A_bad_query_names_the_parameter(string query, string code, string field)
    {
        using var response = await api.Get("/v1/colours?" + query);
        var finding = Assert.Single(await Problems.Findings(response, 400, code));
        Assert.Equal(field, finding.Place());
    }

    [Theory]
    [InlineData("""{"colorants":[{"colorant":"copper","percent":60},{"colorant":"iron","percent":50}]}""", "percent-sum", "")]
    [InlineData("""{"colorants":[{"colorant":"copper","percent":1}],"cone":6}""", "cone-as-number", "/cone")]
    [InlineData("""{"colorants":[{"percent":1}]}""", "member-missing", "/colorants/0/colorant")]
    [InlineData("""{"colorants":[null]}""", "member-missing", "/colorants/0/colorant")]
    [InlineData("""{"colorants":[{"colorant":"copper"}],"additives":[{"additive":"tinn"}]}""", "additive-unknown", "/additives/0/additive")]
    [InlineData("""{"colorants":[{"colorant":"copper"},{"colorant":"copper-carbonate"}]}""", "ingredient-repeated", "")]
    [InlineData("""{"colorants":[]}""", "empty-request", "/colorants")]
    [InlineData("""{"colorants":[{"colorant":"copper","percent":[1]}]}""", "percent-unreadable", "/colorants/0/percent")]
    public async Task A_bad_recipe_names_the_member(string body, string code, string field)
    {
        using var response = await api.Post(Url, body);
        var finding = Assert.Single(await Problems.Findings(response, 400, code));
        Assert.Equal(field, finding.Place());
    }

    [Theory]
    // Ids of version 1.4.0 of the data package, and what the rows say.
    [InlineData("/v1/cautions/caut13", "/v1/cautions/chromium-dust-and-fume")]
    [InlineData("/v1/limits/lim29", "/v1/limits/lead-osha-pel")]
    [InlineData("/v1/limits/fc17", "/v1/limits/exceedance-rule-eu")]
    [InlineData("/v1/load-rules/load24", "/v1/load-rules/clearance-to-lid")]
    public async Task An_old_id_is_answered_by_its_new_name(string old, string current)
    {
        using var response = await api.Get(old);
        var finding = Assert.Single(await Problems.Findings(response, 404, "renamed"));
        var now = Assert.Single(finding.GetProperty("allowed").Strings());
        Assert.Equal(current.Split('/')[^1], now);
        using var renamed = await api.Get(current);
        Assert.Equal(200, (int)renamed.StatusCode);
    }

    [Theory]
    [InlineData("/v1/colorants/coper", "copper")]
    [InlineData("/v1/processes/sallt", "salt")]
    [InlineData("/v1/cautions/carbon-monoxid", "carbon-monoxide")]
    [InlineData("/v1/limits/silica-osha-pell", "silica-osha-pel")]
    public async Task An_unknown_id_names_near_ones(string url, string near)
    {
        using var response = await api.Get(url);
        Assert.Contains(near, Assert.Single(await Problems.Findings(response, 404, "not-found")).GetProperty("allowed").Strings());
    }

    // Zinc is a flux and an opacifier of crystals, and colours nothing by itself (data additives, common practice).
    [Theory]
    [InlineData("zinc", "zinc colours nothing by itself: it is an additive and goes into additives, as “zinc”.")]
    [InlineData("bone ash", "bone ash colours nothing by itself: it is an additive and goes into additives, as “bone-ash”.")]
    public async Task An_additive_among_the_colorants_is_told_where_it_goes(string sent, string likely)
    {
        using var response = await api.Post(Url, $$"""{"colorants":[{"colorant":"{{sent}}","percent":3}]}""");
        var problem = await Support.Api.Read(response, 400);

        Assert.Equal(likely, problem.GetProperty("errors")[0].GetProperty("likelyMistake").GetString());
    }
}
