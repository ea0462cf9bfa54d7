using System.Text;
using System.Text.Json;

namespace ConeService.Api.Tests.Contract;

/// <summary>Every example of the document is asked, as it stands there.</summary>
public class ExampleTests(Support.Api api)
{
    private static readonly OpenApiDocumentFile Document = OpenApiDocumentFile.Committed;

    /// <summary>Route, name of the example, body.</summary>
    public static TheoryData<string, string, string> Bodies =>
    [
        .. from operation in Document.Operations
           where operation.Method == "post"
           from example in Content(operation.Route).GetProperty("examples").EnumerateObject()
           select (operation.Route, example.Name, example.Value.GetProperty("value").GetRawText()),
    ];

    public static TheoryData<string, string> Csv =>
    [
        .. from operation in Document.Operations
           where operation.Method == "post"
           let content = Document.Operation(operation.Route, "post").GetProperty("requestBody").GetProperty("content")
           where content.TryGetProperty("text/csv", out _)
           select (operation.Route, content.GetProperty("text/csv").GetProperty("example").GetString()!),
    ];

    public static TheoryData<string> Reads => [.. Document.Operations.Where(o => o.Method == "get").Select(o => o.Route)];

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task An_example_of_a_body_is_answered_and_is_what_its_schema_says(string route, string name, string body)
    {
        Assert.NotEmpty(name);
        using var sent = JsonDocument.Parse(body);
        Assert.Empty(Document.Departures(sent.RootElement, Document.RequestSchema(route)));
        using var response = await api.Post(Address(route, "post", query: false), body);
        await Support.Api.Read(response, 200);
    }

    // A batch answers 200 whatever its questions are: of an example every question is answered too.
    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task No_question_of_an_example_is_refused(string route, string name, string body)
    {
        Assert.NotEmpty(name);
        using var response = await api.Post(Address(route, "post", query: false), body);
        var answer = await Support.Api.Read(response, 200);
        if (answer.TryGetProperty("refused", out var refused)) Assert.Equal(0, refused.GetInt32());
    }

    [Theory]
    [MemberData(nameof(Csv))]
    public async Task An_example_in_csv_is_answered(string route, string body)
    {
        using var response = await api.Post(Address(route, "post", query: true), body, "text/csv");
        await Support.Api.Read(response, 200);
    }

    // As somebody copies it, without the examples of all parameters; what a forecast needs beside its log stands in its description.
    [Theory]
    [MemberData(nameof(Csv))]
    public async Task An_example_in_csv_is_answered_as_it_stands(string route, string body)
    {
        const string needed = "?units=C&cone=6";
        var told = Document.Operation(route, "post").GetProperty("description").GetString()!
            .Replace("&amp;", "&", StringComparison.Ordinal);
        using var response = await api.Post(route + (told.Contains(needed, StringComparison.Ordinal) ? needed : ""), body, "text/csv");
        await Support.Api.Read(response, 200);
    }

    [Theory]
    [MemberData(nameof(Reads))]
    public async Task A_read_is_answered_for_the_examples_of_all_its_parameters(string route)
    {
        using var response = await api.Get(Address(route, "get", query: true));
        Assert.True(response.IsSuccessStatusCode, await response.Content.ReadAsStringAsync(Support.Api.Cancel));
    }

    [Fact]
    public void Every_body_has_a_minimal_and_a_full_example_and_every_parameter_one()
    {
        var bodies = Document.Operations.Where(o => o.Method == "post").Select(o => Content(o.Route)).ToList();
        Assert.All(bodies, b => Assert.Equal(["full", "minimal"], b.GetProperty("examples").EnumerateObject().Select(e => e.Name).Order()));
        var parameters = Document.Operations.SelectMany(o => Parameters(o.Route, o.Method)).ToList();
        Assert.NotEmpty(parameters);
        Assert.All(parameters, p => Assert.True(p.TryGetProperty("example", out _), $"{p} has no example"));
    }

    // A minimal example without one more of its members is refused, or that member would not belong there.
    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task A_minimal_example_has_nothing_to_spare(string route, string name, string body)
    {
        if (name != "minimal") return;
        var node = System.Text.Json.Nodes.JsonNode.Parse(body)!.AsObject();
        foreach (var member in node.Select(m => m.Key).ToList())
        {
            var less = node.DeepClone().AsObject();
            less.Remove(member);
            using var response = await api.Post(Address(route, "post", query: false), less.ToJsonString());
            Assert.Equal(400, (int)response.StatusCode);
        }
    }

    // A round chamber has a diameter in place of width and depth; both at once are refused.
    [Fact]
    public async Task A_fit_is_answered_for_a_round_chamber_too()
    {
        const string Diameter = "interiorDiameterMillimetres";
        const string Route = "/v1/schedules/{schedule}/fit";
        var round = Parameters(Route, "get").First(p => p.GetProperty("name").GetString() == Diameter).GetProperty("example").GetString();
        var asked = Address(Route, "get", query: true).Split('&')
            .Where(a => !a.StartsWith("interiorWidth", StringComparison.Ordinal)
                && !a.StartsWith("interiorDepth", StringComparison.Ordinal));
        using var response = await api.Get($"{string.Join('&', asked)}&{Diameter}={round}");
        Assert.True(response.IsSuccessStatusCode, await response.Content.ReadAsStringAsync(Support.Api.Cancel));
    }

    internal static string Address(string route, string method, bool query)
    {
        var (address, asked) = (route, new StringBuilder());
        foreach (var parameter in Parameters(route, method))
        {
            var name = parameter.GetProperty("name").GetString()!;
            // Asked by itself.
            if (name == "interiorDiameterMillimetres") continue;
            var value = Uri.EscapeDataString(parameter.GetProperty("example").GetString()!);
            var inPath = parameter.GetProperty("in").GetString() == "path";
            if (inPath) address = address.Replace($"{{{name}}}", value, StringComparison.Ordinal);
            else if (query) asked.Append(asked.Length == 0 ? '?' : '&').Append(name).Append('=').Append(value);
        }

        return address + asked;
    }

    private static List<JsonElement> Parameters(string route, string method) =>
        Document.Operation(route, method).TryGetProperty("parameters", out var list) ? [.. list.EnumerateArray()] : [];

    private static JsonElement Content(string route) => Document.Operation(route, "post")
        .GetProperty("requestBody").GetProperty("content").GetProperty("application/json");
}
