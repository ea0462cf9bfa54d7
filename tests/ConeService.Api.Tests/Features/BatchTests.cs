using System.Text.Json;
using System.Text.Json.Nodes;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Features;

/// <summary>Several questions in one request: each is answered as alone, in the order asked, and none is dropped.</summary>
public class BatchTests(Support.Api api)
{
    private const string Copper = """{"colorants":[{"colorant":"copper","percent":0.5}],"base":"calcium","cone":"10"}""";
    private const string Pairing =
        """{"body":"mid-range-stoneware-light","firing":{"firingKind":"glaze","cone":"6","atmosphere":"oxidation"}}""";
    private const string Load = """
        {"kiln":{"heat":"electric","maxCone":"8"},"firing":{"firingKind":"glaze","cone":"04","atmosphere":"oxidation"},
         "pieces":[{"id":"a","body":"mid-range-stoneware-light","state":"bisqued"}]}
        """;
    private const string Kiln = """{"heat":"electric","volumeLitres":150,"kilowatts":9}""";

    [Theory]
    [InlineData("/v1/colours/resolve", Copper)]
    [InlineData("/v1/pairings/check", Pairing)]
    [InlineData("/v1/loads/check", Load)]
    public async Task A_question_of_a_batch_is_answered_as_it_would_be_alone(string route, string question)
    {
        using var alone = await api.Post(route, question);
        var answer = await Batch(route + "/batch", $$"""{"items":[{{question}},{{question}}]}""");
        Assert.Equal(2, answer.GetProperty("answered").GetInt32());
        Assert.Equal(0, answer.GetProperty("refused").GetInt32());
        var expected = await Support.Api.Read(alone, 200);
        Assert.All(answer.GetProperty("items").EnumerateArray().Select(i => i.GetProperty("answer")), a =>
            Assert.True(JsonElement.DeepEquals(expected, a)));
    }

    [Fact]
    public async Task Fits_of_one_kiln_are_answered_as_they_would_be_alone()
    {
        using var alone = await api.Post("/v1/schedules/mid-range-glaze/fit", $$"""{"units":"C","cone":"6","kiln":{{Kiln}}}""");
        var answer = await Batch("/v1/schedules/fit/batch", $$"""
            {"units":"C","kiln":{{Kiln}},"items":[{"schedule":"mid-range-glaze","cone":"6"},{"schedule":"low-fire-glaze","cone":"06"}]}
            """);
        var items = answer.GetProperty("items").EnumerateArray().ToList();
        Assert.True(JsonElement.DeepEquals(await Support.Api.Read(alone, 200), items[0].GetProperty("answer")));
        Assert.Equal([1, 2], items.Select(i => i.GetProperty("number").GetInt32()));
        Assert.All(items, i => Assert.Equal(JsonValueKind.Object, i.GetProperty("answer").ValueKind));
    }

    [Theory]
    [InlineData("/v1/colours/resolve/batch", Copper, """{"colorants":[{"colorant":"coper"}]}""", "/items/1/colorants/0/colorant")]
    [InlineData("/v1/colours/resolve/batch", Copper,
        """{"colorants":[{"colorant":"copper","percent":60},{"colorant":"cobalt","percent":60}]}""", "/items/1")]
    [InlineData("/v1/pairings/check/batch", Pairing, """{"body":"mid-range-stoneware-light"}""", "/items/1/firing")]
    [InlineData("/v1/pairings/check/batch", Pairing, "null", "/items/1")]
    [InlineData("/v1/loads/check/batch", Load, "null", "/items/1")]
    [InlineData("/v1/loads/check/batch", Load,
        """{"firing":{"firingKind":"glaze","cone":"6","atmosphere":"oxidation"},"pieces":[{"id":"a"}]}""",
        "/items/1/kiln")]
    [InlineData("/v1/schedules/fit/batch", """{"schedule":"candle"}""", """{"schedule":"mid-range-glaze"}""", "/items/1/cone")]
    [InlineData("/v1/schedules/fit/batch", """{"schedule":"candle"}""", """{"schedule":"mid-rang-glaze"}""", "/items/1/schedule")]
    [InlineData("/v1/schedules/fit/batch", """{"schedule":"candle"}""", """{"cone":"6"}""", "/items/1/schedule")]
    public async Task A_bad_question_gets_its_problems_and_the_good_ones_their_answers(
        string route, string good, string bad, string member)
    {
        var answer = await Batch(route, $$"""{"items":[{{good}},{{bad}},{{good}}]}""");
        Assert.Equal(2, answer.GetProperty("answered").GetInt32());
        Assert.Equal(1, answer.GetProperty("refused").GetInt32());
        var items = answer.GetProperty("items").EnumerateArray().ToList();
        Assert.Equal([true, false, true], items.Select(i => i.GetProperty("answer").ValueKind == JsonValueKind.Object));
        Assert.Equal([0, 0], [items[0].GetProperty("problems").GetArrayLength(), items[2].GetProperty("problems").GetArrayLength()]);
        Assert.Contains(items[1].GetProperty("problems").EnumerateArray(), p => p.Place() == member);
    }

    // A fault of what all questions share stands where the caller wrote it, and refuses those that need it.
    [Fact]
    public async Task A_fault_of_the_kiln_is_told_where_the_kiln_stands()
    {
        var answer = await Batch("/v1/schedules/fit/batch", """
            {"units":"C","kiln":{"heat":"electric","volumeLitres":2},"items":[{"schedule":"mid-range-glaze","cone":"6"}]}
            """);
        var problem = answer.GetProperty("items")[0].GetProperty("problems")[0];
        Assert.Equal("/kiln/volumeLitres", problem.Place());
    }

    [Theory]
    [InlineData("/v1/colours/resolve/batch", Copper)]
    [InlineData("/v1/pairings/check/batch", Pairing)]
    [InlineData("/v1/schedules/fit/batch", """{"schedule":"candle"}""")]
    public async Task A_batch_holds_one_to_a_hundred_questions(string route, string question)
    {
        foreach (var (count, code) in new[] { (0, "empty-request"), (101, "too-many-items") })
        {
            var questions = string.Join(',', Enumerable.Repeat(question, count));
            using var response = await api.Post(route, Filled(route, $$"""{"items":[{{questions}}]}"""));
            var finding = Assert.Single(await Problems.Findings(response, 400, code));
            Assert.Equal("/items", finding.Place());
        }
    }

    private async Task<JsonElement> Batch(string route, string body)
    {
        using var response = await api.Post(route, Filled(route, body));
        return await Support.Api.Read(response, 200);
    }

    // Only fits have units.
    private static string Filled(string route, string body)
    {
        var node = JsonNode.Parse(body)!.AsObject();
        if (route.StartsWith("/v1/schedules", StringComparison.Ordinal)) node["units"] = "C";
        return node.ToJsonString();
    }
}
