using System.Text.Json;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

/// <summary>However much is sent and however much of it is wrong, what is answered stays small and says what it leaves out.</summary>
public class BoundedAnswerTests(Support.Api api)
{
    private const int MostFindings = 50;
    private const int MostCharacters = 200;

    // Fifty findings with their sentences and lists of what is allowed.
    private const int Large = 200_000;

    [Fact]
    public async Task A_header_of_commas_is_one_finding()
    {
        using var response = await api.Post("/v1/conversions", "cone" + new string(',', 100_000) + "\n6\n", "text/csv");
        await Problems.Findings(response, 400, "too-many-columns");
        Assert.True(response.Content.Headers.ContentLength < 2000);
    }

    [Fact]
    public async Task A_thousand_columns_of_the_senders_own_are_carried()
    {
        var own = string.Join(",", Enumerable.Range(1, 999).Select(i => $"c{i}"));
        using var response = await api.Post("/v1/conversions", $"cone,{own}\n6,x\n", "text/csv", "text/csv");
        Assert.Equal(200, (int)response.StatusCode);
    }

    [Fact]
    public async Task Lines_beyond_the_most_are_counted_and_not_answered()
    {
        var lines = string.Concat(Enumerable.Repeat("6\n", 300_000));
        using var response = await api.Post("/v1/conversions", "cone\n" + lines, "text/csv");
        var problem = await Support.Api.Read(response, 400);
        Assert.Contains("300000", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Single(problem.GetProperty("errors").EnumerateArray());
    }

    [Theory]
    [InlineData("/v1/heat-work/compare", """{"firings":[#]}""", "{}", "/firings")]
    [InlineData("/v1/heat-work/compare", """{"units":"C","segments":[{"target":1222}],"observations":[#]}""", "{}", "/observations")]
    [InlineData("/v1/conversions", """{"lines":[#]}""", "{}", "/lines")]
    [InlineData("/v1/heat-work", """{"units":"C","segments":[#]}""", "{}", "/segments")]
    [InlineData("/v1/schedules/fit/batch", """{"units":"C","items":[#]}""", "{}", "/items")]
    [InlineData("/v1/pairings/check/batch", """{"items":[#]}""", "{}", "/items")]
    [InlineData("/v1/colours/resolve", """{"colorants":[#]}""", "{}", "/colorants")]
    [InlineData("/v1/colours/resolve/batch", """{"items":[#]}""", "{}", "/items")]
    public async Task A_list_that_is_too_long_is_refused_as_a_whole(string address, string body, string entry, string pointer)
    {
        var list = string.Join(",", Enumerable.Repeat(entry, 900_000));
        using var response = await api.Post(address, body.Replace("#", list, StringComparison.Ordinal));
        Assert.True(response.Content.Headers.ContentLength < Large);
        var problem = await Support.Api.Read(response, 400);
        var finding = Assert.Single(problem.GetProperty("errors").EnumerateArray());
        Assert.Equal(pointer, finding.Place());
    }

    [Fact]
    public async Task A_list_that_is_too_long_within_another_is_counted()
    {
        var coats = string.Join(",", Enumerable.Repeat("{}", 4000));
        using var response = await api.Post("/v1/pairings/check", $$"""
            {"body":"mid-range-stoneware-light","coats":[{{coats}}],
             "firing":{"firingKind":"glaze","cone":"6","atmosphere":"oxidation"} }
            """);
        var problem = await Support.Api.Read(response, 400);
        Assert.Contains("4000", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_beyond_a_list_that_is_too_long_is_still_told_with_its_place()
    {
        var list = string.Join(",", Enumerable.Repeat("{}", 5000));
        using var response = await api.Post("/v1/conversions", $$"""{"lines":[{{list}}],"unit":"C"}""");
        Assert.Equal(["/unit", "/lines"], (await Problems.Findings(response, 400, "invalid-request")).Select(f => f.Place()));
    }

    [Fact]
    public async Task A_list_whose_name_is_written_with_escapes_is_counted_too()
    {
        var list = string.Join(",", Enumerable.Repeat("{}", 900_000));
        using var response = await api.Post("/v1/conversions", $$"""{"\u006cines":[{{list}}]}""");
        Assert.Contains("900000", (await Support.Api.Read(response, 400)).GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"lines":[{"\ud800":1}]}""")]
    [InlineData("""{"\udc00":[{}]}""")]
    [InlineData("""{"lines":["\ud800"]}""")]
    public async Task Half_a_character_is_malformed(string body)
    {
        using var response = await api.Post("/v1/conversions", body);
        Assert.Equal(400, (int)response.StatusCode);
    }

    [Fact]
    public async Task Fifty_findings_are_listed_and_the_others_counted()
    {
        var pieces = string.Join(",", Enumerable.Repeat("""{"id":7}""", 2000));
        using var response = await api.Post("/v1/loads/check", $$"""{"pieces":[{{pieces}}]}""");
        Assert.True(response.Content.Headers.ContentLength < Large);
        var problem = await Support.Api.Read(response, 400);
        Assert.Equal(MostFindings, problem.GetProperty("errors").GetArrayLength());
        // Kiln and firing are missing besides, and each piece has an id that is no text.
        Assert.True(problem.GetProperty("moreErrors").GetInt32() >= 2002 - MostFindings);
        Assert.EndsWith("more things are wrong.", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.True(problem.GetProperty("detail").GetString()!.Length < 5000);
    }

    [Fact]
    public async Task Few_findings_are_all_listed()
    {
        using var response = await api.Post("/v1/loads/check", "{}");
        var problem = await Support.Api.Read(response, 400);
        Assert.Equal(0, problem.GetProperty("moreErrors").GetInt32());
    }

    [Fact]
    public async Task Every_question_of_a_batch_keeps_a_reason()
    {
        var items = string.Join(",", Enumerable.Repeat("""{"body":1,"firing":{"firingKind":1,"cone":1,"atmosphere":1}}""", 100));
        using var response = await api.Post("/v1/pairings/check/batch", $$"""{"items":[{{items}}]}""");
        var answers = (await Support.Api.Read(response, 200)).GetProperty("items").EnumerateArray().ToList();
        Assert.All(answers, a => Assert.NotEmpty(a.GetProperty("problems").EnumerateArray()));
        Assert.True(answers.Sum(a => a.GetProperty("problems").GetArrayLength()) <= MostFindings + 100);
        // What is told of the first is what is wrong with each.
        var wrong = answers[0].GetProperty("problems").GetArrayLength();
        Assert.True(wrong > 1);
        Assert.All(answers, a => Assert.Equal(
            wrong, a.GetProperty("problems").GetArrayLength() + a.GetProperty("moreProblems").GetInt32()));
    }

    public static TheoryData<string, string, string> LongTexts => new()
    {
        { "/v1/conversions", """{"lines":[{"cone":"#"}]}""", "application/json" },
        { "/v1/conversions", """{"lines":[{"temperature":"#"}]}""", "application/json" },
        { "/v1/conversions", """{"lines":[{"cone":"6","chart":"#"}]}""", "application/json" },
        { "/v1/conversions", """{"units":"#","lines":[{"cone":"6"}]}""", "application/json" },
        { "/v1/conversions", """{"#":1}""", "application/json" },
        { "/v1/conversions", "cone\n#\n", "text/csv" },
        { "/v1/heat-work", """{"units":"C","segments":[{"target":1222}],"chart":"#"}""", "application/json" },
        { "/v1/loads/check", """{"kiln":{"heat":"#"}}""", "application/json" },
        { "/v1/colours/resolve", """{"colorants":[{"colorant":"#"}]}""", "application/json" },
        { "/v1/schedules/bisque-careful/fit", """{"units":"C","cone":"06","start":"#"}""", "application/json" },
    };

    [Theory]
    [MemberData(nameof(LongTexts))]
    public async Task What_was_sent_is_told_back_in_short(string address, string body, string type)
    {
        // Blanks and noughts are where a pattern could go back and forth; half an emoji is no character.
        string[] texts =
        [
            new('x', 900_000), "6" + new string(' ', 900_000) + "x", new string('0', 900_000) + "x",
            string.Concat(Enumerable.Repeat("😀", 200_000)),
        ];
        foreach (var text in texts)
        {
            using var response = await api.Post(address, body.Replace("#", text, StringComparison.Ordinal), type)
                .WaitAsync(TimeSpan.FromMinutes(1), Support.Api.Cancel);
            Assert.True(response.Content.Headers.ContentLength < 20_000, $"{response.Content.Headers.ContentLength} bytes");
            Assert.True((int)response.StatusCode < 500);
            using var document = JsonDocument.Parse(await response.Content.ReadAsStringAsync(Support.Api.Cancel));
            Assert.All(Values(document.RootElement), v => Assert.True(v.Length < MostCharacters - 1 || v[^1] == '…', v));
            Assert.All(Values(document.RootElement), v => Assert.True(v.Length <= MostCharacters, v));
        }
    }

    [Theory]
    [InlineData("cone", "٣", "Write 3.")]
    [InlineData("cone", "０６", "Write 06.")]
    [InlineData("temperature", "１２２２C", "Write 1222C.")]
    [InlineData("temperature", "12𝟚𝟚C", "Write 1222C.")]
    [InlineData("rate", "٦٠C/h", "Write 60C/h.")]
    public async Task Digits_of_other_scripts_are_a_problem_of_their_own_line(string column, string text, string meant)
    {
        var line = column == "rate" ? $$"""{"cone":"6","rate":"{{text}}"}""" : $$"""{"{{column}}":"{{text}}"}""";
        using var json = await api.Post("/v1/conversions", $$"""{"lines":[{{line}},{"cone":"6"}]}""");
        Refused((await Support.Api.Read(json, 200)).GetProperty("lines"), meant);
        var cells = column switch { "cone" => $"{text};;", "temperature" => $";{text};", _ => $"6;;{text}" };
        using var csv = await api.Post("/v1/conversions", $"cone;temperature;rate\n{cells}\n6;;\n", "text/csv");
        Refused((await Support.Api.Read(csv, 200)).GetProperty("lines"), meant);
    }

    [Theory]
    [InlineData("1.2e3", "1200C")]
    [InlineData("12E2", "1200C")]
    [InlineData("1222.3000000000002", "1222.3C")]
    public async Task A_number_of_JSON_is_read_however_it_is_written(string number, string text)
    {
        using var bare = await api.Post("/v1/conversions", $$"""{"units":"C","lines":[{"temperature":{{number}} }]}""");
        using var told = await api.Post("/v1/conversions", $$"""{"lines":[{"temperature":"{{text}}"}]}""");
        var (one, other) = (await Support.Api.Read(bare, 200), await Support.Api.Read(told, 200));
        Assert.Equal(1, one.GetProperty("answered").GetInt32());
        Assert.Equal(Reading(other), Reading(one));
    }

    private static string Reading(JsonElement answer) => answer.GetProperty("lines")[0].GetProperty("reading").GetRawText();

    private static void Refused(JsonElement lines, string meant)
    {
        var finding = Assert.Single(lines[0].GetProperty("problems").EnumerateArray());
        Assert.Equal(meant, finding.GetProperty("likelyMistake").GetString());
        Assert.Empty(lines[1].GetProperty("problems").EnumerateArray());
    }

    private static IEnumerable<string> Values(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(
            m => m.NameEquals("value") && m.Value.ValueKind == JsonValueKind.String ? [m.Value.GetString()!] : Values(m.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Values),
        _ => [],
    };
}
