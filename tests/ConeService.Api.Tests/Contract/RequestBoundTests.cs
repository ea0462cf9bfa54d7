using System.Text.Json;
using System.Text.Json.Nodes;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Contract;

/// <summary>
/// The document says of requests what the service does: what just leaves a declared bound is refused, at the member; what just keeps
/// it is answered. A kiln is one record for all routes, each of which judges what it reads: one route is enough.
/// </summary>
public class RequestBoundTests(Support.Api api)
{
    private static readonly OpenApiDocumentFile Document = OpenApiDocumentFile.Committed;

    // No route reads the shelves of a kiln yet: they belong to its one record.
    private static bool IsUnread(string key) => key.StartsWith("KilnShelves.", StringComparison.Ordinal);

    // Requests in which bounds can be met that the examples have no room for: a tiny and a huge kiln, green ware, °F.
    private static readonly (string Route, string Body)[] Further =
    [
        (Fit("bisque-mixed-ware"), """
            {"units":"C","cone":"06","kiln":{"heat":"electric","volumeLitres":5,"elementFirings":3},"load":{"dryness":"wet"}}
            """),
        (Fit("gas-reduction"), """
            {"units":"F","cone":"10","startTemperature":100,"roomTemperature":60,
             "kiln":{"heat":"gas","volumeLitres":5000,"kilowatts":900,"fuelFactor":2,"maxTemperature":3000},
             "load":{"kilogramsWare":500,"kilogramsFurniture":500}}
            """),
        (Fit("raku-western"), """{"units":"C","kiln":{"heat":"raku","maxCone":"6","maxTemperature":1200,"volumeLitres":60}}"""),
        (Fit("mid-range-glaze"), """
            {"units":"C","cone":"6","kiln":{"heat":"electric","volumeLitres":150},"startNotBefore":"2026-12-04T17:00:00+01:00",
             "finishBy":"2026-12-07T08:00:00+01:00",
             "peakBetween":{"from":"2026-12-04T17:00:00+01:00","to":"2026-12-07T08:00:00+01:00"}}
            """),
        ("/v1/schedules/fit/batch", """
            {"units":"C",
             "tariff":{"perKilowattHour":0.36,"currency":"EUR","periods":[{"from":"22:00","to":"06:00","perKilowattHour":0.18}]},
             "kiln":{"heat":"electric","volumeLitres":150},
             "items":[{"schedule":"mid-range-glaze","cone":"6","startNotBefore":"2026-12-04T17:00:00+01:00","timeZone":"Europe/Berlin",
                       "finishBy":"2026-12-07T08:00:00+01:00"},
                      {"schedule":"mid-range-glaze","cone":"6","startNotBefore":"2026-12-04T17:00:00+01:00",
                       "peakBetween":{"from":"2026-12-04T17:00:00+01:00","to":"2026-12-07T08:00:00+01:00"}}]}
            """),
        ("/v1/heat-work", """
            {"units":"F","start":70,"segments":[{"rate":270,"target":1832},{"rate":108,"target":2228,"holdMinutes":5}],"coolingRate":200}
            """),
        ("/v1/heat-work", """
            {"units":"F","start":70,"segments":[{"rate":270,"target":1832}],"naturalCooling":{"firstRate":300,"room":60}}
            """),
        ("/v1/heat-work", """{"units":"F","start":70,"segments":[{"rate":270,"target":1832},{"rate":-300,"target":1000}]}"""),
        ("/v1/heat-work", """{"units":"F","log":[{"minutes":0,"temperature":70},{"minutes":600,"temperature":2232}]}"""),
        ("/v1/heat-work", """{"units":"C","log":[{"minutes":0,"temperature":20},{"minutes":600,"temperature":1222}]}"""),
        ("/v1/heat-work/compare", """
            {"units":"C","log":[{"minutes":0,"temperature":20},{"minutes":642,"temperature":1222}],
             "observations":[{"cone":"6","degrees":50}]}
            """),
        ("/v1/heat-work/compare", """
            {"units":"C","log":[{"minutes":0,"temperature":20},{"minutes":642,"temperature":1222}],"observations":[{"cone":"6"}]}
            """),
        ("/v1/heat-work/compare", """
            {"units":"C","start":20,"segments":[{"target":1222}],"coolingRate":200,"fullSpeedRate":150,
             "observations":[{"cone":"6","clock":5}]}
            """),
        ("/v1/heat-work/compare", """
            {"firings":[{"units":"C","start":20,"segments":[{"target":1222}],"observations":[{"cone":"6","clock":5}]}]}
            """),
        ("/v1/heat-work/forecast", """
            {"units":"F","cone":"6","log":[{"minutes":0,"temperature":70},{"minutes":500,"temperature":1900}],
             "segments":[{"rate":108,"target":2228,"holdMinutes":5}],"coolingRate":200,"fullSpeedRate":300}
            """),
        ("/v1/schedules/fit/batch",
            """{"units":"F","items":[{"schedule":"mid-range-glaze","cone":"6","startTemperature":70,"roomTemperature":60}]}"""),
        ("/v1/heat-work", """
            {"units":"C","segments":[{"rate":150,"target":1222}],"thermocouple":{"standard":"astm-e230"}}
            """),
        ("/v1/loads/check", """
            {"kiln":{"heat":"electric","maxCone":"10","atmospheres":["oxidation","reduction","neutral"],
                     "interior":{"heightMillimetres":500,"diameterMillimetres":400}},
             "firing":{"firingKind":"bisque","cone":"06","atmosphere":"oxidation"},
             "pieces":[{"id":"jar","body":"red-earthenware","state":"bone-dry"}]}
            """),
        ("/v1/colours/resolve", """{"colorants":[{"colorant":"copper","percent":2}]}"""),
        ("/v1/colours/resolve", """{"colorants":[{"colorant":"copper"}],"additives":[{"additive":"tin oxide","percent":2}]}"""),
        ("/v1/conversions", """{"units":"C","lines":[{"temperature":1222}]}"""),
    ];

    public static TheoryData<string> Routes => [.. Document.Operations.Where(o => o.Method == "post").Select(o => o.Route)];

    [Fact]
    public async Task What_leaves_a_bound_of_the_document_is_refused_at_its_member()
    {
        var left = await Untried(allowed: false, (findings, probe) => findings is not null && findings.Exists(f => Covers(f, probe)));
        Assert.True(left.Count == 0, "Not refused: " + string.Join(", ", left.Order(StringComparer.Ordinal)));
    }

    [Fact]
    public async Task What_keeps_a_bound_of_the_document_is_answered()
    {
        var left = await Untried(allowed: true, (findings, _) => findings is []);
        Assert.True(left.Count == 0, "Not answered: " + string.Join(", ", left.Order(StringComparer.Ordinal)));
    }

    // What is declared must be declared of something: else the tests above would pass over nothing.
    [Fact]
    public void The_document_declares_bounds_of_every_kind()
    {
        var keys = Routes.SelectMany(r => RequestProbes.Keys(Document, Document.RequestSchema(r.Data))).ToHashSet(StringComparer.Ordinal);
        Assert.All(
            [
                "closed", "required", "not null", "enum", "pattern", "whole", "minimum", "maximum", "exclusiveMinimum", "minItems",
                "maxItems", "default",
            ],
            kind => Assert.Contains(keys, k => k.EndsWith(" " + kind, StringComparison.Ordinal)));
    }

    [Fact]
    public void Requests_are_closed_and_answers_are_open()
    {
        var requests = Routes.SelectMany(r => RequestProbes.Keys(Document, Document.RequestSchema(r.Data)))
            .Select(k => k.Split('.', ' ')[0]).ToHashSet(StringComparer.Ordinal);
        foreach (var schema in Document.Root.GetProperty("components").GetProperty("schemas").EnumerateObject())
        {
            if (!schema.Value.TryGetProperty("properties", out _)) continue;
            var closed = schema.Value.TryGetProperty("additionalProperties", out var more) && more.ValueKind == JsonValueKind.False;
            Assert.True(closed == requests.Contains(schema.Name), $"{schema.Name} is {(closed ? "closed" : "open")}");
        }
    }

    [Fact]
    public void The_text_of_a_body_speaks_to_callers()
    {
        var texts = Routes.Select(r => Document.Operation(r.Data, "post").GetProperty("requestBody"))
            .Select(b => b.GetProperty("description").GetString()!).ToList();
        Assert.All(texts, t => Assert.DoesNotContain("data in use", t, StringComparison.OrdinalIgnoreCase));
        Assert.Equal(texts.Count, texts.Distinct().Count());
    }

    [Fact]
    public async Task A_default_of_the_document_is_what_is_taken_when_nothing_is_sent()
    {
        var tried = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (route, address, body) in Asked)
        {
            foreach (var probe in RequestProbes.Of(Document, Document.RequestSchema(route), JsonNode.Parse(body)!))
            {
                if (!probe.Key.EndsWith(" default", StringComparison.Ordinal) || probe.Before is not null) continue;
                using var without = await api.Post(address, body);
                using var with = await api.Post(address, probe.Body.ToJsonString());
                Assert.True(
                    JsonNode.DeepEquals(await Answer(without), await Answer(with)),
                    $"{route}: {probe.Key} is not what is taken without it");
                tried.Add(probe.Key);
            }
        }

        var declared = Routes.SelectMany(r => RequestProbes.Keys(Document, Document.RequestSchema(r.Data)))
            .Where(k => k.EndsWith(" default", StringComparison.Ordinal)).Distinct(StringComparer.Ordinal);
        Assert.Equal(declared.Order(StringComparer.Ordinal), tried.Order(StringComparer.Ordinal));
    }

    private static IEnumerable<(string Route, string Address, string Body)> Asked => ExampleTests.Bodies
        .Select(b => (b.Data.Item1, ExampleTests.Address(b.Data.Item1, "post", query: false), b.Data.Item3))
        .Concat(Further.Select(f => (Document.RouteOf(f.Route)!, f.Route, f.Body)));

    // What was assumed differs, of course, by what was sent.
    private static async Task<JsonNode> Answer(HttpResponseMessage response)
    {
        var answer = JsonNode.Parse((await Support.Api.Read(response, 200)).GetRawText())!;
        Forget(answer);
        return answer;
    }

    private static void Forget(JsonNode? node)
    {
        if (node is JsonArray list)
        {
            foreach (var item in list) Forget(item);
        }
        else if (node is JsonObject thing)
        {
            thing.Remove("assumed");
            foreach (var (_, member) in thing) Forget(member);
        }
    }

    // Which bounds no request could try as it should.
    private async Task<HashSet<string>> Untried(bool allowed, Func<List<string>?, Probe, bool> asItShould)
    {
        var left = new HashSet<string>(StringComparer.Ordinal);
        foreach (var route in Routes) left.UnionWith(RequestProbes.Keys(Document, Document.RequestSchema(route.Data)));
        left.RemoveWhere(k => IsUnread(k) || IsKept(k) != allowed);
        foreach (var (route, address, body) in Asked)
        {
            foreach (var probe in RequestProbes.Of(Document, Document.RequestSchema(route), JsonNode.Parse(body)!))
            {
                if (probe.Allowed != allowed || !left.Contains(probe.Key)) continue;
                if (asItShould(await Findings(address, probe.Body), probe)) left.Remove(probe.Key);
            }
        }

        return left;
    }

    private static bool IsKept(string key) =>
        key.EndsWith(" kept", StringComparison.Ordinal) || key.EndsWith(" default", StringComparison.Ordinal)
        || key.Contains(" enum ", StringComparison.Ordinal);

    // The pointers of all findings; none when all is answered.
    private async Task<List<string>?> Findings(string address, JsonNode body)
    {
        using var response = await api.Post(address, body.ToJsonString());
        var answer = await Support.Api.Read(response, (int)response.StatusCode);
        if ((int)response.StatusCode == 400) return Pointers(answer.GetProperty("errors"));
        Assert.Equal(200, (int)response.StatusCode);
        if (!answer.TryGetProperty("refused", out _)) return [];
        var several = answer.TryGetProperty("items", out var items) ? items : answer.GetProperty("lines");
        return [.. several.EnumerateArray().SelectMany(i => Pointers(i.GetProperty("problems")))];
    }

    private static List<string> Pointers(JsonElement findings) =>
        [.. findings.EnumerateArray().Select(f => f.Place())];

    // Of a thermocouple the three words are wrong together; of a list the entry may be told.
    private static bool Covers(string finding, Probe probe) => finding.Length > 1 && (probe.Pointer == finding
        || probe.Pointer.StartsWith(finding + "/", StringComparison.Ordinal)
        || (probe.IsList && finding.StartsWith(probe.Pointer + "/", StringComparison.Ordinal)));

    private static string Fit(string schedule) => $"/v1/schedules/{schedule}/fit";
}
