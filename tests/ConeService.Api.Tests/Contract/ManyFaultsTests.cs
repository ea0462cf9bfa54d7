using System.Text.Json;
using System.Text.Json.Nodes;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Contract;

/// <summary>Of every operation of the document: whoever sends many mistakes hears of each in one answer.</summary>
public class ManyFaultsTests(Support.Api api)
{
    private const string Unknown = "noSuchThing";
    private const string Nonsense = "~ no such word ~";

    private static readonly OpenApiDocumentFile Document = OpenApiDocumentFile.Committed;

    // A log of many samples would fill the fifty findings that are listed.
    private const int MostSamples = 2;

    // One record of a kiln serves all routes; what a route has no use for it leaves unread, also where it is wrong.
    private static readonly string[] ReadOfKilnByLoads =
        ["interior/heightMillimetres", "interior/widthMillimetres", "interior/depthMillimetres"];

    // Any text is a name, a question, or a material that somebody must look at; kind is short for firingKind, which tells of both.
    private static readonly HashSet<string> FreeTexts =
        ["readFit kilnId", "search q", "findPairing body", "findPairing glaze", "findPairing kind"];

    public static TheoryData<string> Posts => [.. Document.Operations.Where(o => o.Method == "post").Select(o => o.Route)];

    public static TheoryData<string> Reads =>
        [.. Document.Operations.Where(o => o.Method == "get" && Query(o.Route, "get").Count > 0).Select(o => o.Route)];

    [Theory]
    [MemberData(nameof(Posts))]
    public async Task Numbers_in_quotation_marks_an_unknown_member_and_a_wrong_parameter_are_told_together(string route)
    {
        var body = Full(route);
        Shorten(body);
        var quoted = new Dictionary<string, string>(StringComparer.Ordinal);
        Quote(Document.RequestSchema(route), body, "", quoted);
        body.AsObject()["no-such-member"] = 1;
        var query = Query(route, "post");
        var address = ExampleTests.Address(route, "post", query: false)
            + (query.Count == 0 ? "" : "?" + string.Join('&', query.Select(q => $"{q}={Uri.EscapeDataString(Nonsense)}")));

        using var response = await api.Post(address, body.ToJsonString());

        var problem = await Support.Api.Read(response, 400);
        var errors = problem.GetProperty("errors").EnumerateArray().ToList();
        Assert.Equal(0, problem.GetProperty("moreErrors").GetInt32());
        Assert.Equal("unknown-member", One(errors, "/no-such-member").GetProperty("code").GetString());
        foreach (var (pointer, number) in quoted.Where(q => IsJudged(route, q.Key)))
        {
            var told = One(errors, pointer);
            Assert.Equal("number-expected", told.GetProperty("code").GetString());
            Assert.Equal(number, told.GetProperty("value").GetString());
            Assert.NotEmpty(told.GetProperty("allowed").EnumerateArray());
            Assert.Contains($"write {number}, not \"{number}\"", told.GetProperty("likelyMistake").GetString(), StringComparison.Ordinal);
        }

        foreach (var parameter in query) One(errors, parameter);
        // What is there is not missing: only its form is wrong.
        Assert.DoesNotContain(errors, e => e.GetProperty("code").GetString() == "member-missing");
    }

    [Theory]
    [MemberData(nameof(Posts))]
    public async Task A_wrong_form_of_each_member_is_told_at_its_place(string route)
    {
        foreach (var (name, _) in Full(route).AsObject().ToList())
        {
            var body = Full(route).AsObject();
            // No member of any request is a list of lists.
            body[name] = new JsonArray(new JsonArray());
            using var response = await api.Post(ExampleTests.Address(route, "post", query: false), body.ToJsonString());
            var errors = (await Support.Api.Read(response, 400)).GetProperty("errors").EnumerateArray().ToList();
            Assert.All(errors, e => Assert.StartsWith("/" + name, e.Place(), StringComparison.Ordinal));
            Assert.DoesNotContain(errors, e => e.GetProperty("code").GetString() is "malformed-json" or "member-missing");
        }
    }

    [Theory]
    [MemberData(nameof(Reads))]
    public async Task Wrong_and_unknown_parameters_are_told_together(string route)
    {
        var operation = Document.Operation(route, "get").GetProperty("operationId").GetString();
        var query = Query(route, "get");
        var asked = string.Join('&', query.Append(Unknown).Select(q => $"{q}={Uri.EscapeDataString(Nonsense)}"));

        using var response = await api.Get($"{ExampleTests.Address(route, "get", query: false)}?{asked}", "application/json");

        var errors = (await Support.Api.Read(response, 400)).GetProperty("errors").EnumerateArray().ToList();
        Assert.Equal("unknown-parameter", One(errors, Unknown).GetProperty("code").GetString());
        foreach (var parameter in query.Where(q => !FreeTexts.Contains($"{operation} {q}"))) One(errors, parameter);
    }

    private static bool IsJudged(string route, string pointer)
    {
        var of = pointer.IndexOf("/kiln/", StringComparison.Ordinal);
        if (of < 0) return true;
        var member = pointer[(of + "/kiln/".Length)..];
        if (member.StartsWith("shelves/", StringComparison.Ordinal)) return route == "/v1/plans";
        return route is "/v1/loads/check" or "/v1/loads/check/batch" or "/v1/pairings/check" or "/v1/pairings/check/batch" or "/v1/plans"
            ? ReadOfKilnByLoads.Contains(member) || member.StartsWith("thermocouple/", StringComparison.Ordinal)
            : true;
    }

    private static JsonElement One(List<JsonElement> errors, string place)
    {
        var there = errors.Where(e => e.Place() == place).ToList();
        var all = string.Join(", ", errors.Select(e => $"{e.Place()}: {e.GetProperty("code")}"));
        Assert.True(there.Count == 1, $"{there.Count} findings at {place}, among {all}");
        return there[0];
    }

    private static JsonNode Full(string route) => JsonNode.Parse(
        Document.Operation(route, "post").GetProperty("requestBody").GetProperty("content").GetProperty("application/json")
            .GetProperty("examples").GetProperty("full").GetProperty("value").GetRawText())!;

    private static List<string> Query(string route, string method) =>
        Document.Operation(route, method).TryGetProperty("parameters", out var list)
            ? [.. list.EnumerateArray().Where(p => p.GetProperty("in").GetString() == "query")
                .Select(p => p.GetProperty("name").GetString()!).Where(n => n != "dataset")]
            : [];

    private static void Shorten(JsonNode? node)
    {
        if (node is JsonArray list)
        {
            foreach (var item in list) Shorten(item);
        }
        else if (node is JsonObject thing)
        {
            while (thing["log"] is JsonArray log && log.Count > MostSamples) log.RemoveAt(MostSamples);
            foreach (var (_, member) in thing) Shorten(member);
        }
    }

    // What the document calls a number and nothing else.
    private static void Quote(JsonElement schema, JsonNode? node, string at, Dictionary<string, string> quoted)
    {
        var own = Bare(schema);
        if (node is JsonArray list)
        {
            for (var i = 0; i < list.Count; i++) Quote(own.GetProperty("items"), list[i], $"{at}/{i}", quoted);
        }
        else if (node is JsonObject thing)
        {
            foreach (var (name, member) in thing.ToList())
            {
                var of = own.GetProperty("properties").GetProperty(name);
                if (member is not JsonValue value || value.GetValueKind() != JsonValueKind.Number)
                {
                    Quote(of, member, $"{at}/{name}", quoted);
                }
                else if (!Types(Bare(of)).Contains("string"))
                {
                    quoted[$"{at}/{name}"] = value.ToJsonString();
                    thing[name] = value.ToJsonString();
                }
            }
        }
    }

    private static List<string?> Types(JsonElement schema) => schema.GetProperty("type") is { ValueKind: JsonValueKind.Array } several
        ? [.. several.EnumerateArray().Select(t => t.GetString())]
        : [schema.GetProperty("type").GetString()];

    private static JsonElement Bare(JsonElement schema)
    {
        schema = Document.Resolve(schema);
        if (schema.TryGetProperty("oneOf", out var options)) return Bare(options[1]);
        return schema.TryGetProperty("allOf", out var all) ? Bare(all[0]) : schema;
    }
}
