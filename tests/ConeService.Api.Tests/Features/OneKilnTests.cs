using System.Text.Json;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Features;

/// <summary>A caller keeps one record of a kiln and sends it to every address.</summary>
public class OneKilnTests(Support.Api api)
{
    /// <summary>A kiln with every member that the contract has; 300 mm across and 480 mm high, π/4·0.3²·0.48 m³ = 33.9 L.</summary>
    private const string Kiln = """
        {"id":"Otto","heat":"electric","atmospheres":["oxidation","neutral"],"maxCone":"10","maxTemperature":1300,
         "interior":{"heightMillimetres":480,"diameterMillimetres":300},"volumeLitres":34,
         "wall":{"material":"insulating-firebrick","thicknessMillimetres":76},"kilowatts":4,"voltsInstalled":240,"voltsAsWired":230,
         "elementFirings":40,"controllerSegments":12,"leakFactor":1,
         "thermocouple":{"type":"S","standard":"iec-60584","class":"2","firings":10},
         "shelves":{"layers":4,"perLayer":1,"thicknessMillimetres":15,"diameterMillimetres":280}}
        """;

    private const string Firing = """ "firing":{"firingKind":"bisque","cone":"06","atmosphere":"oxidation"} """;

    /// <summary>A piece, open at its end.</summary>
    private const string Bowl = """ {"id":"a","body":"red-earthenware","state":"bone-dry" """;

    /// <summary>The addresses that take a kiln, each with a body around it.</summary>
    public static TheoryData<string, string> Routes => new()
    {
        { "/v1/schedules/bisque-careful/fit", """{"cone":"06","units":"C","kiln":KILN}""" },
        { "/v1/loads/check", $$$"""{"kiln":KILN,{{{Firing}}},"pieces":[{{{Bowl}}},"size":{"heightMillimetres":200}}]}""" },
        { "/v1/pairings/check", $$"""{"kiln":KILN,{{Firing}},"body":"red-earthenware","state":"bone-dry"}""" },
    };

    [Theory]
    [MemberData(nameof(Routes))]
    public async Task The_same_kiln_with_all_its_members_is_accepted(string route, string body)
    {
        using var response = await api.Post(route, body.Replace("KILN", Kiln, StringComparison.Ordinal));
        await Support.Api.Read(response, 200);
    }

    // What a fit does not read a fit does not judge, and so with the others.
    [Theory]
    [InlineData("/v1/schedules/bisque-careful/fit", "\"atmospheres\":[\"oxidation\",\"neutral\"]", "\"atmospheres\":[\"smoky\"]")]
    [InlineData("/v1/schedules/bisque-careful/fit", "\"layers\":4", "\"layers\":\"four\"")]
    [InlineData("/v1/loads/check", "\"kilowatts\":4", "\"kilowatts\":\"four\"")]
    [InlineData("/v1/loads/check", "\"controllerSegments\":12", "\"controllerSegments\":1")]
    [InlineData("/v1/pairings/check", "\"material\":\"insulating-firebrick\"", "\"material\":7")]
    public async Task A_member_that_is_not_read_is_not_judged(string route, string member, string wrong)
    {
        using var response = await api.Post(route, Body(route, member, wrong));
        await Support.Api.Read(response, 200);
    }

    [Theory]
    [InlineData("/v1/schedules/bisque-careful/fit", "\"kilowatts\":4", "\"kilowatts\":\"4\"", "number-expected", "/kiln/kilowatts")]
    [InlineData("/v1/schedules/bisque-careful/fit", "\"heat\":\"electric\",", "", "member-missing", "/kiln/heat")]
    [InlineData("/v1/loads/check", "\"heat\":\"electric\",", "", "member-missing", "/kiln/heat")]
    [InlineData("/v1/schedules/bisque-careful/fit", "\"id\":\"Otto\"", "\"id\":7", "text-expected", "/kiln/id")]
    [InlineData("/v1/loads/check", "\"id\":\"Otto\"", "\"id\":7", "text-expected", "/kiln/id")]
    [InlineData("/v1/schedules/bisque-careful/fit", "\"heightMillimetres\":480,", "", "member-missing", "/kiln/interior/heightMillimetres")]
    [InlineData("/v1/loads/check", "\"heightMillimetres\":480,", "", "member-missing", "/kiln/interior/heightMillimetres")]
    [InlineData(
        "/v1/schedules/bisque-careful/fit", "\"diameterMillimetres\":300", "\"diameterMillimetres\":300,\"widthMillimetres\":300",
        "kiln-size-conflict", "/kiln/interior")]
    [InlineData(
        "/v1/loads/check", "\"diameterMillimetres\":300", "\"diameterMillimetres\":300,\"widthMillimetres\":300", "kiln-size-conflict",
        "/kiln/interior")]
    [InlineData("/v1/schedules/bisque-careful/fit", "\"maxCone\":\"10\"", "\"maxCone\":10", "cone-as-number", "/kiln/maxCone")]
    [InlineData("/v1/loads/check", "\"maxCone\":\"10\"", "\"maxCone\":10", "cone-as-number", "/kiln/maxCone")]
    [InlineData(
        "/v1/schedules/bisque-careful/fit",
        "\"elementFirings\":40",
        "\"elementFirings\":40.5",
        "number-out-of-range",
        "/kiln/elementFirings")]
    [InlineData("/v1/loads/check", "\"kilowatts\":4", "\"kilowats\":4", "unknown-member", "/kiln/kilowats")]
    public async Task What_is_wrong_with_a_kiln_is_told_alike_everywhere(
        string route, string member, string wrong, string code, string field)
    {
        using var response = await api.Post(route, Body(route, member, wrong));
        Assert.Equal(field, Assert.Single(await Problems.Findings(response, 400, code)).Place());
    }

    // 480 mm of room, π/4·300² across: a piece 500 mm high, or 310 mm wide, does not go in; the latter is wider than its shelf too.
    [Theory]
    [InlineData("{\"heightMillimetres\":500}", "too-tall")]
    [InlineData("{\"heightMillimetres\":200,\"widthMillimetres\":310}", "too-tall")]
    public async Task A_round_room_is_as_wide_and_deep_as_its_diameter(string size, string reason)
    {
        using var response = await api.Post(
            "/v1/loads/check", $$$"""{"kiln":{{{Kiln}}},{{{Firing}}},"pieces":[{{{Bowl}}},"size":{{{size}}}}]}""");
        var piece = (await Support.Api.Read(response, 200)).GetProperty("pieces")[0];
        var codes = piece.GetProperty("reasons").EnumerateArray().Select(r => r.GetProperty("code").GetString()).ToList();
        Assert.Equal(reason, Assert.Single(codes.Distinct()));
    }

    [Fact]
    public async Task The_document_says_which_members_are_numbers()
    {
        var schemas = (await api.Json("/openapi/v1.json")).GetProperty("components").GetProperty("schemas");
        var members = schemas.GetProperty("Kiln").GetProperty("properties");
        string[] numbers =
        [
            "maxTemperature", "volumeLitres", "kilowatts", "voltsInstalled", "voltsAsWired", "elementAge", "leakFactor", "fuelFactor",
        ];
        Assert.All(numbers, n => Assert.Contains("number", Types(members.GetProperty(n))));
        Assert.All(["elementFirings", "controllerSegments"], n => Assert.Contains("integer", Types(members.GetProperty(n))));
        Assert.All(["id", "maxCone"], n => Assert.DoesNotContain("number", Types(members.GetProperty(n))));
        Assert.EndsWith("/KilnHeat", members.GetProperty("heat").GetProperty("$ref").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_old_name_of_the_thickness_is_unknown_and_the_new_one_offered()
    {
        using var response = await api.Post(
            "/v1/loads/check", $$$"""{"kiln":{{{Kiln}}},{{{Firing}}},"pieces":[{{{Bowl}}},"thicknessMillimetres":9}]}""");
        var finding = Assert.Single(await Problems.Findings(response, 400, "unknown-member"));
        Assert.Equal("Probably thickestMillimetres.", finding.GetProperty("likelyMistake").GetString());
    }

    private static IEnumerable<string?> Types(JsonElement schema) =>
        schema.GetProperty("type") is { ValueKind: JsonValueKind.Array } many
            ? many.EnumerateArray().Select(t => t.GetString())
            : [schema.GetProperty("type").GetString()];

    private static string Body(string route, string member, string wrong)
    {
        Assert.Contains(member, Kiln, StringComparison.Ordinal);
        var kiln = Kiln.Replace(member, wrong, StringComparison.Ordinal);
        return Routes.Single(r => r.Data.Item1 == route).Data.Item2.Replace("KILN", kiln, StringComparison.Ordinal);
    }
}
