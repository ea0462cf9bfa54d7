using System.Text.Json;
using ConeService.Api.Tests.Support;
using CsCheck;

namespace ConeService.Api.Tests.Features;

/// <summary>The load check over HTTP.</summary>
public class LoadCheckTests(Support.Api api)
{
    private const string Electric =
        """ "kiln":{"id":"toploader","heat":"electric","maxCone":"10","atmospheres":["oxidation","neutral"]} """;
    private const string Gas = """ "kiln":{"heat":"gas","maxCone":"11","atmospheres":["oxidation","neutral","reduction"]} """;

    [Fact]
    public async Task Earthenware_in_cone_10_reduction_is_refused_as_melting_onto_the_shelf()
    {
        var answer = await Check(
            Gas, "glaze", "10", "reduction",
            """{"id":"bowl","body":"red-earthenware","state":"bisqued","coats":[{"glaze":"low-fire-boron-clear"}]}""");

        Assert.Equal("refuse", answer.GetProperty("verdict").GetString());
        var reason = answer.GetProperty("pieces")[0].GetProperty("reasons")[0];
        Assert.Equal("body-overfired", reason.GetProperty("code").GetString());
        Assert.Contains("melts onto the shelf", reason.GetProperty("message").GetString(), StringComparison.Ordinal);
        Assert.Contains("cox-1914", reason.GetProperty("sources").Strings());
        Assert.Equal(["05"], answer.GetProperty("suggestedFirings").EnumerateArray().Select(f => f.GetProperty("cone").GetString()));
    }

    [Fact]
    public async Task A_cone_10_porcelain_glaze_at_cone_04_is_refused_as_unmelted()
    {
        var answer = await Check(
            Electric, "glaze", "04", "oxidation",
            """{"id":"cup","body":"high-fire-porcelain","state":"bisqued","coats":[{"glaze":"high-fire-clear"}]}""");

        var reason = answer.GetProperty("pieces")[0].GetProperty("reasons").EnumerateArray()
            .Single(r => r.GetProperty("code").GetString() == "glaze-underfired");
        Assert.Equal("refuse", reason.GetProperty("severity").GetString());
        Assert.Contains("does not melt", reason.GetProperty("message").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_mixed_bisque_at_06_is_accepted_with_version_basis_sources_and_assumptions()
    {
        var answer = await Check(Electric, "bisque", "06", "oxidation", """
            {"id":"a","body":"red-earthenware","state":"bone-dry"},
            {"id":"b","body":"mid-range-stoneware-light","state":"bone-dry","count":12},
            {"id":"c","body":"high-fire-porcelain","state":"bone-dry"}
            """);

        Assert.Equal("accept", answer.GetProperty("verdict").GetString());
        Assert.Equal("printed", answer.GetProperty("basis").GetString());
        Assert.NotEmpty(answer.GetProperty("datasetVersion").GetString()!);
        Assert.Contains(
            "/pieces/0/thickestMillimetres",
            answer.GetProperty("assumed").EnumerateArray().Select(a => a.Place()));
    }

    [Fact]
    public async Task Everything_wrong_with_a_request_is_told_at_once_with_pointers()
    {
        using var response = await api.Post("/v1/loads/check", """
            {"kiln":{"maxCone":10,"atmospheres":["smoky"]},"firing":{"firingKind":"glase","cone":6,"atmosphere":"oxydation"},
             "pieces":[{"id":"a","count":0,"body":"red-earthenware","state":"bisqued","thickestMillimetres":-3},
                       {"id":"a","count":10001,
                        "ownBody":{"name":"x","bisque":{"min":"04","max":"06"},"mature":{"min":"5","best":"6","max":"7"}},
                        "state":"bisqued"},null]}
            """);
        var findings = await Problems.Findings(response, 400, "invalid-request");

        Assert.Equal(
            [
                "member-missing /kiln/heat", "cone-as-number /kiln/maxCone", "word-unknown /kiln/atmospheres/0",
                "word-unknown /firing/firingKind", "cone-as-number /firing/cone", "word-unknown /firing/atmosphere",
                "number-out-of-range /pieces/0/count", "number-out-of-range /pieces/0/thickestMillimetres",
                "number-out-of-range /pieces/1/count",
                "range-inverted /pieces/1/ownBody/bisque/max", "piece-id-repeated /pieces/1/id", "member-missing /pieces/2",
            ],
            findings.Select(f => $"{f.GetProperty("code").GetString()} {f.Place()}"));
    }

    [Theory]
    [InlineData("\"pieces\":[]", "empty-request", "/pieces")]
    [InlineData("\"pieces\":[{\"body\":\"red-earthenware\",\"state\":\"bisqued\"}]", "member-missing", "/pieces/0/id")]
    [InlineData("""
        "pieces":[{"id":"a","body":"red-earthenware","earlierFirings":[{"cone":"06"}]}]
        """, "member-missing", "/pieces/0/earlierFirings/0/firingKind")]
    [InlineData("""
        "pieces":[{"id":"a","body":"red-earthenware","coats":[{"glaze":"majolica","where":"on top"}],"state":"bisqued"}]
        """, "word-unknown", "/pieces/0/coats/0/where")]
    [InlineData("\"pieces\":[{\"id\":7,\"body\":\"red-earthenware\",\"state\":\"bisqued\"}]", "text-expected", "/pieces/0/id")]
    [InlineData("\"pieces\":[{\"id\":\"mug\\nnot glazed\",\"body\":\"red-earthenware\"}]", "text-unprintable", "/pieces/0/id")]
    [InlineData("\"pieces\":[{\"id\":\"\u202Egum\",\"body\":\"red-earthenware\"}]", "text-unprintable", "/pieces/0/id")]
    [InlineData("\"ref\":\"a\\u0007\",\"pieces\":[{\"id\":\"a\",\"body\":\"red-earthenware\"}]", "text-unprintable", "/ref")]
    [InlineData("""
        "pieces":[{"id":"a","count":"3","body":"red-earthenware","state":"bisqued"}]
        """, "number-expected", "/pieces/0/count")]
    [InlineData("""
        "pieces":[{"id":"a","body":"red-earthenware","ownBody":{},"state":"bisqued"}]
        """, "material-ambiguous", "/pieces/0/ownBody")]
    [InlineData("\"pieces\":[{\"id\":\"a\",\"bodi\":\"red-earthenware\",\"state\":\"bisqued\"}]", "unknown-member", "/pieces/0/bodi")]
    public async Task A_load_that_cannot_be_read_is_refused_with_the_place(string pieces, string code, string field)
    {
        using var response = await api.Post(
            "/v1/loads/check", $$"""{{{Electric}},"firing":{"firingKind":"glaze","cone":"04","atmosphere":"oxidation"},{{pieces}}}""");
        var finding = Assert.Single(await Problems.Findings(response, 400, code));

        Assert.Equal(field, finding.Place());
    }

    [Theory]
    [InlineData(200, false)]
    [InlineData(201, true)]
    public async Task A_name_has_two_hundred_characters_at_most(int characters, bool refused)
    {
        using var response = await api.Post("/v1/loads/check", $$"""
            {{{Electric}},"firing":{"firingKind":"glaze","cone":"04","atmosphere":"oxidation"},
             "pieces":[{"id":"{{new string('m', characters)}}","body":"red-earthenware"}]}
            """);
        if (!refused) await Support.Api.Read(response, 200);
        else Assert.Equal("/pieces/0/id", Assert.Single(await Problems.Findings(response, 400, "text-too-long")).Place());
    }

    // Four coats each for two thousand pieces: docs/stability.md.
    [Theory]
    [InlineData(800, 10, false)]
    [InlineData(801, 10, true)]
    public async Task A_load_has_eight_thousand_coats_at_most(int pieces, int coats, bool refused)
    {
        var layers = string.Join(',', Enumerable.Repeat("{\"glaze\":\"majolica\"}", coats));
        var all = string.Join(',', Enumerable.Range(0, pieces).Select(i =>
            $$"""{"id":"p{{i}}","body":"red-earthenware","coats":[{{layers}}]}"""));
        var load = $$"""{{{Electric}},"firing":{"firingKind":"glaze","cone":"04","atmosphere":"oxidation"},"pieces":[{{all}}]}""";
        using var response = await api.Post("/v1/loads/check", load);
        using var batch = await api.Post("/v1/loads/check/batch", $$"""{"items":[{{load}}]}""");
        if (!refused)
        {
            await Support.Api.Read(response, 200);
            await Support.Api.Read(batch, 200);
            return;
        }

        Assert.Equal("/pieces", Assert.Single(await Problems.Findings(response, 400, "too-many-coats")).Place());
        Assert.Equal("/items", Assert.Single(await Problems.Findings(batch, 400, "too-many-coats")).Place());
    }

    [Fact]
    public async Task A_batch_has_ten_thousand_pieces_at_most()
    {
        var all = string.Join(',', Enumerable.Range(0, 1001).Select(i => $$"""{"id":"p{{i}}"}"""));
        var load = $$"""{{{Electric}},"firing":{"firingKind":"glaze","cone":"04","atmosphere":"oxidation"},"pieces":[{{all}}]}""";
        using var response = await api.Post(
            "/v1/loads/check/batch", $$"""{"items":[{{string.Join(',', Enumerable.Repeat(load, 10))}}]}""");
        Assert.Equal("/items", Assert.Single(await Problems.Findings(response, 400, "too-many-pieces")).Place());
    }

    [Fact]
    public async Task An_incomplete_piece_is_for_review_and_the_others_are_answered()
    {
        var answer = await Check(Electric, "glaze", "6", "oxidation", """
            {"id":"a"},
            {"id":"b","ownBody":{"name":"clay of a bag","mark":"cone 6"},"state":"bisqued",
             "coats":[{"ownGlaze":{"name":"jar","mark":"5–6"}}]},
            {"id":"c","body":"mid-range-stoneware-light","coats":[{"glaze":"mid-range-gloss"}],
             "earlierFirings":[{"firingKind":"bisque"}]}
            """);
        var pieces = answer.GetProperty("pieces").EnumerateArray().ToList();

        Assert.Equal(["review", "review", "accept"], pieces.Select(p => p.GetProperty("verdict").GetString()));
        Assert.All(
            pieces.Take(2).SelectMany(p => p.GetProperty("reasons").EnumerateArray()),
            r => Assert.Equal("unknown-material", r.GetProperty("code").GetString()));
    }

    [Fact]
    public async Task Two_thousand_pieces_are_checked_and_one_more_is_refused()
    {
        var piece = (int i) => $$$"""
            {"id":"p{{{i}}}","body":"mid-range-stoneware-light","state":"bisqued",
             "coats":[{"ownGlaze":{"name":"tile {{{i % 37}}}","cones":{"min":"5","best":"6","max":"7"} } } ]}
            """;
        var pieces = (int count) => string.Join(',', Enumerable.Range(0, count).Select(piece));
        var answer = await Check(Electric, "glaze", "6", "oxidation", pieces(2000));
        using var refused = await api.Post("/v1/loads/check", Body(Electric, "glaze", "6", "oxidation", pieces(2001)));

        Assert.Equal((2000, "accept"), (answer.GetProperty("pieces").GetArrayLength(), answer.GetProperty("verdict").GetString()));
        var finding = Assert.Single(await Problems.Findings(refused, 400, "too-many-pieces"));
        Assert.Equal("2001", finding.GetProperty("value").GetString());
    }

    [Fact]
    public async Task A_pairing_says_what_it_assumed_and_what_would_work()
    {
        using var response = await api.Post("/v1/pairings/check", """
            {"body":"mid-range-stoneware-light","coats":[{"glaze":"mid-range-gloss"}],
             "firing":{"firingKind":"glaze","cone":"06","atmosphere":"oxidation"}}
            """);
        var answer = await Support.Api.Read(response, 200);

        Assert.Equal("refuse", answer.GetProperty("verdict").GetString());
        Assert.Equal("cone-zero-mix-up", answer.GetProperty("reasons")[0].GetProperty("code").GetString());
        Assert.Equal("6", answer.GetProperty("suggestedFirings")[0].GetProperty("cone").GetString());
        Assert.Equal(
            ["/kiln", "/state", "/use"],
            answer.GetProperty("assumed").EnumerateArray().Select(a => a.Place()));
    }

    [Fact]
    public async Task A_light_answer_says_each_reason_once()
    {
        var pieces = string.Join(',', Enumerable.Range(0, 500).Select(i =>
            $$"""{"id":"p{{i}}","ref":"b{{i}}","body":"red-earthenware","state":"bisqued","coats":[{"glaze":"majolica"}]}"""));
        var body = Body(Electric, "glaze", "6", "oxidation", pieces);
        using var full = await api.Post("/v1/loads/check", body);
        using var light = await api.Post("/v1/loads/check?detail=verdicts", body);
        using var wrong = await api.Post("/v1/loads/check?detail=some", body);
        var answer = await Support.Api.Read(light, 200);

        Assert.Equal("b7", answer.GetProperty("pieces")[7].GetProperty("ref").GetString());
        var numbers = answer.GetProperty("pieces")[7].GetProperty("reasonNumbers").EnumerateArray().Select(n => n.GetInt32()).ToList();
        Assert.Equal(answer.GetProperty("reasonTable").EnumerateArray().Select(r => r.GetProperty("number").GetInt32()), numbers);
        Assert.True(Length(full) > 5 * Length(light), $"{Length(full)} and {Length(light)} bytes");
        Assert.Equal("detail", Assert.Single(await Problems.Findings(wrong, 400, "word-unknown")).Place());

        static long Length(HttpResponseMessage response) => response.Content.Headers.ContentLength!.Value;
    }

    [Fact]
    public async Task A_coat_that_is_a_text_is_an_id()
    {
        const string piece = """{"id":"a","body":"mid-range-stoneware-light","state":"bisqued","coats":[COAT]}""";
        var text = await Check(Electric, "glaze", "6", "oxidation", piece.Replace("COAT", "\"mid-range-gloss\"", StringComparison.Ordinal));
        var whole = await Check(
            Electric, "glaze", "6", "oxidation", piece.Replace("COAT", """{"glaze":"mid-range-gloss"}""", StringComparison.Ordinal));

        Assert.True(JsonElement.DeepEquals(whole, text));
        using var number = await api.Post(
            "/v1/loads/check", Body(Electric, "glaze", "6", "oxidation", piece.Replace("COAT", "6", StringComparison.Ordinal)));
        Assert.Single(await Problems.Findings(number, 400, "object-expected"));
    }

    [Fact]
    public async Task Unknown_members_and_wrong_values_are_told_together()
    {
        using var response = await api.Post("/v1/loads/check", """
            {"kiln":{"heat":"electric","maxCone":"8","colour":"red"},
             "firing":{"firingKind":"glost","cone":"6","atmosphere":"oxidation"},
             "pieces":[{"id":"a","bodi":"red-earthenware","state":"greenware","coats":["majolica"]}]}
            """);

        Assert.Equal(
            [
                "unknown-member /kiln/colour", "unknown-member /pieces/0/bodi", "word-unknown /firing/firingKind",
                "word-unknown /pieces/0/state",
            ],
            (await Problems.Findings(response, 400, "invalid-request")).Select(f => $"{f.GetProperty("code").GetString()} {f.Place()}"));
    }

    [Fact]
    public async Task A_pairing_may_be_asked_by_a_link()
    {
        const string link =
            "/v1/pairings/check?body=mid-range-stoneware-light&glaze=underglaze,mid-range-gloss&cone=06&atmosphere=oxidation";
        using var posted = await api.Post("/v1/pairings/check", """
            {"body":"mid-range-stoneware-light","coats":[{"glaze":"underglaze"},{"glaze":"mid-range-gloss"}],
             "firing":{"firingKind":"glaze","cone":"06","atmosphere":"oxidation"},"use":"food"}
            """);
        var expected = await Support.Api.Read(posted, 200);

        Assert.True(JsonElement.DeepEquals(expected, await api.Json(link + "&firingKind=glaze&use=food")));
        Assert.True(JsonElement.DeepEquals(expected, await api.Json(link + "&kind=glaze&use=food")));
        using var wrong = await api.Client.GetAsync(
            new Uri("/v1/pairings/check?cone=0&atmosphere=air&kind=glost", UriKind.Relative), Support.Api.Cancel);
        Assert.Equal(
            ["word-unknown kind", "cone-zero cone", "word-unknown atmosphere", "member-missing body"],
            (await Problems.Findings(wrong, 400, "invalid-request")).Select(f => $"{f.GetProperty("code").GetString()} {f.Place()}"));
    }

    [Fact]
    public async Task Cautions_are_those_that_the_load_brings_about_the_gravest_first()
    {
        var plain = await Check(Electric, "glaze", "6", "oxidation", """
            {"id":"a","body":"mid-range-stoneware-light","state":"bisqued",
             "coats":[{"glaze":"mid-range-gloss","contains":["barium","copper"]}]}
            """);
        var hottest = await Check(Electric, "glaze", "10", "oxidation", """{"id":"a","body":"high-fire-porcelain","state":"bisqued"}""");
        var raw = await Check(Electric, "bisque", "06", "oxidation", """{"id":"a","body":"red-earthenware","state":"bone-dry"}""");

        Assert.Equal(
            ["barium-carbonate-toxic", "kiln-fumes", "copper-fume", "thermal-shock-fragments"],
            plain.GetProperty("cautions").EnumerateArray().Select(c => c.GetProperty("id").GetString()));
        Assert.DoesNotContain("electric-shock", plain.ToString(), StringComparison.Ordinal);
        Assert.Contains("kiln-over-temperature", hottest.GetProperty("cautions").ToString(), StringComparison.Ordinal);
        Assert.Contains("steam-explosion-of-ware", raw.GetProperty("cautions").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Reason_codes_are_listed()
    {
        var codes = (await api.Json("/v1/reason-codes")).GetProperty("items").EnumerateArray().ToList();

        Assert.Equal("body-overfired", codes[0].GetProperty("id").GetString());
        Assert.Equal("Body over its range", codes[0].GetProperty("name").GetString());
        Assert.Contains("body-stands-glaze-cone", codes[0].GetProperty("loadRules").Strings());
    }

    [Fact]
    public async Task Every_rule_that_a_reason_names_has_an_address()
    {
        var answer = await Check(
            Electric, "overglaze", "018", "reduction",
            """{"id":"a","body":"red-earthenware","state":"wet","coats":[{"glaze":"celadon"}],"use":"food"}""");
        foreach (var reason in answer.GetProperty("pieces")[0].GetProperty("reasons").EnumerateArray())
        {
            var rule = await api.Json("/v1/load-rules/" + reason.GetProperty("rule").GetString());
            Assert.Contains(reason.GetProperty("code").GetString()!, rule.GetProperty("reasonCodes").Strings());
        }
    }

    [Fact]
    public Task Whatever_stands_in_a_member_the_answer_is_never_a_500()
    {
        string[] junk =
        [
            "null", "true", "0", "-1", "1e400", "0.5", "6", "\"\"", "\" \"", "\"06\"", "\"\\u0000\"", "\"🔥\"",
            "[]", "{}", "[null]", "[[1]]",
            "\"06a\"", "\"26\"", "\"05.5\"", "\"paper-clay\"", "\"bone-china\"",
        ];
        const string valid = """
            {"kiln":{"id":"a","heat":"gas","maxCone":"11","atmospheres":["oxidation"],"interior":{"heightMillimetres":400}},
             "firing":{"firingKind":"glaze","cone":"6","atmosphere":"oxidation","schedule":"s"},
             "pieces":[{"id":"a","count":2,"body":"red-earthenware",
                        "coats":[{"glaze":"celadon","contains":["tin"]},
                                 {"ownGlaze":{"name":"x","cones":{"min":"5","best":"6","max":"7"},"atmospheres":["oxidation"]}}],
                        "state":"bisqued","thickestMillimetres":5,"size":{"heightMillimetres":9},"use":"food"}]}
            """;
        var places = System.Text.RegularExpressions.Regex.Matches(valid, """(?<=":)("[^"]*"|\d+|\[[^\[\]{}]*\])""").ToList();
        return Gen.Select(Gen.Int[0, places.Count - 1], Gen.Int[0, junk.Length - 1]).SampleAsync(async (place, with) =>
        {
            var body = valid[..places[place].Index] + junk[with] + valid[(places[place].Index + places[place].Length)..];
            using var content = new StringContent(body, System.Text.Encoding.UTF8, "application/json");
            using var response = await api.Client.PostAsync(new Uri("/v1/loads/check", UriKind.Relative), content);
            Assert.True((int)response.StatusCode is 200 or 400, body);
        }, iter: 500, threads: 1);
    }

    private async Task<JsonElement> Check(string kiln, string kind, string cone, string atmosphere, string pieces)
    {
        using var response = await api.Post("/v1/loads/check", Body(kiln, kind, cone, atmosphere, pieces));
        return await Support.Api.Read(response, 200);
    }

    private static string Body(string kiln, string kind, string cone, string atmosphere, string pieces) =>
        $$"""{{{kiln}},"firing":{"firingKind":"{{kind}}","cone":"{{cone}}","atmosphere":"{{atmosphere}}"},"pieces":[{{pieces}}]}""";
}
