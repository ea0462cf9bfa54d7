using System.Text.Json;
using System.Text.RegularExpressions;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Contract;

/// <summary>From any computed number to its equation in two requests: <c>explain</c> leads there, and it says what it rests on.</summary>
public partial class ExplainTests(Support.Api api)
{
    [Theory]
    [MemberData(nameof(RouteQuestions.All), MemberType = typeof(RouteQuestions))]
    public async Task Whatever_explains_an_answer_is_there(string route, string url, string? body)
    {
        if (!OpenApiDocumentFile.Committed.MediaTypes(route, body is null ? "get" : "post", "200").Contains("application/json")) return;
        using var response = body is null ? await api.Get(url) : await api.Post(url, body);
        var answers = Explained(await Support.Api.Read(response, 200)).ToList();
        if (body is not null) Assert.NotEmpty(answers);
        foreach (var address in answers.Select(a => a.GetProperty("explain").GetString()!).Distinct())
        {
            var told = await api.Json(address);
            if (address == "/v1/load-rules") continue;
            Assert.False(string.IsNullOrWhiteSpace(told.GetProperty("text").GetString()));
            foreach (var source in told.GetProperty("sources").Strings()) await api.Json("/v1/sources/" + source);
            foreach (var other in told.GetProperty("restsOn").Strings()) await api.Json("/v1/equations/" + other);
        }

        Assert.All(answers, a => Assert.True(a.TryGetProperty("confidence", out _)));
    }

    // Which equation, by what was asked: the chart prints cone 6 at 15, 60 and 150 °C/h, and the small chart cone 6 at 300 only.
    [Theory]
    [InlineData("/v1/cones/6/end-point?rate=60C/h", "end-point-printed")]
    [InlineData("/v1/cones/6/end-point?rate=33C/h", "end-point-of-a-ramp")]
    [InlineData("/v1/cones/6/end-point?rate=60C/h&chart=small", "borrowed-curve")]
    [InlineData("/v1/temperatures/1222C/cone", "cone-reached")]
    [InlineData("/v1/colours?colorant=copper", "colour-of-a-recipe")]
    public async Task A_look_up_names_its_equation(string url, string equation) =>
        Assert.Equal("/v1/equations/" + equation, (await api.Json(url)).GetProperty("explain").GetString());

    [Theory]
    [InlineData("peak", "peak-for-a-cone")]
    [InlineData("hold", "hold-for-a-cone")]
    [InlineData("rate", "rate-for-a-cone")]
    public async Task A_solution_names_its_equation_and_what_it_rests_on(string find, string equation)
    {
        using var response = await api.Post(
            "/v1/heat-work/solve", $$"""{"units":"C","segments":[{"rate":100,"target":1215}],"cone":"6","find":"{{find}}"}""");
        var answer = await Support.Api.Read(response, 200);
        Assert.Equal("/v1/equations/" + equation, answer.GetProperty("explain").GetString());
        Assert.Equal("interpolated", answer.GetProperty("basis").GetString());
        // The cells of cone 6 were seen: what is solved from them is derived.
        Assert.Equal("derived", answer.GetProperty("confidence").GetString());
        Assert.Contains("orton-2016", answer.GetProperty("sources").Strings());
        Assert.Contains(answer.GetProperty("assumed").EnumerateArray(), a => a.GetProperty("pointer").GetString() == "/chart");
    }

    // A solution that there is none of rests on the same curve.
    [Fact]
    public async Task What_can_t_be_solved_says_so_with_the_same_members()
    {
        using var response = await api.Post(
            "/v1/heat-work/solve", """{"units":"C","segments":[{"rate":100,"target":500}],"cone":"6","find":"hold"}""");
        var answer = await Support.Api.Read(response, 200);
        Assert.False(answer.GetProperty("feasible").GetBoolean());
        Assert.Equal("derived", answer.GetProperty("confidence").GetString());
        Assert.NotEmpty(answer.GetProperty("sources").EnumerateArray());
    }

    // The weakest input: a recalled cell, the guess of a kiln, a material of the trade.
    [Theory]
    [InlineData(
        "/v1/heat-work/compare",
        """{"units":"C","chart":"nbs-1926","segments":[{"rate":60,"target":1200}],"observations":[{"cone":"5","look":"down"}]}""",
        "from-memory")]
    [InlineData(
        "/v1/heat-work/compare",
        """{"units":"C","segments":[{"rate":60,"target":1222}],"observations":[{"cone":"6","look":"down"}]}""", "derived")]
    [InlineData(
        "/v1/schedules/mid-range-glaze/fit",
        """{"cone":"6","units":"C","kiln":{"heat":"electric","volumeLitres":150,"kilowatts":11}}""", "estimate")]
    [InlineData("/v1/schedules/mid-range-glaze/fit", """{"cone":"6","units":"C"}""", "common-practice")]
    [InlineData(
        "/v1/pairings/check",
        """{"body":"mid-range-stoneware-light","firing":{"firingKind":"bisque","cone":"06","atmosphere":"oxidation"}}""",
        "common-practice")]
    public async Task An_answer_is_as_sure_as_its_weakest_input(string url, string body, string confidence)
    {
        using var response = await api.Post(url, body);
        Assert.Equal(confidence, (await Support.Api.Read(response, 200)).GetProperty("confidence").GetString());
    }

    [Fact]
    public async Task An_equation_that_there_is_none_of_is_not_found()
    {
        using var response = await api.Get("/v1/equations/cone-lears");
        var finding = (await Problems.Findings(response, 404, "not-found"))[0];
        Assert.Contains("cone-lean", finding.GetProperty("allowed").Strings());
    }

    // Where an equation is derived: a heading of that file, as GitHub and others make anchors of them.
    [Fact]
    public async Task The_documentation_of_an_equation_is_a_heading_that_is_there()
    {
        foreach (var equation in (await api.Json("/v1/equations")).GetProperty("items").EnumerateArray())
        {
            var at = equation.GetProperty("documentation").GetString()!.Split('#');
            var headings = File.ReadLines(Path.Combine(Repository.Root, at[0])).Where(l => l.StartsWith('#'))
                .Select(l => NoAnchor().Replace(l.TrimStart('#').Trim().ToLowerInvariant(), "").Replace(' ', '-'));
            Assert.Contains(at[1], headings);
        }
    }

    private static IEnumerable<JsonElement> Explained(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => (element.TryGetProperty("explain", out _) ? [element] : Enumerable.Empty<JsonElement>())
            .Concat(element.EnumerateObject().SelectMany(p => Explained(p.Value))),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Explained),
        _ => [],
    };

    [GeneratedRegex("[^a-z0-9 -]")]
    private static partial Regex NoAnchor();
}
