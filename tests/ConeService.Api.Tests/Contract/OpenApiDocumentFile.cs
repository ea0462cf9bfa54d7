using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Json.Schema;

namespace ConeService.Api.Tests.Contract;

/// <summary>The committed OpenAPI document, against whose schemas bodies are held.</summary>
internal sealed partial class OpenApiDocumentFile
{
    private const string Id = "https://document.invalid/";
    private static readonly string Path = System.IO.Path.Combine(AppContext.BaseDirectory, "openapi/v1.json");

    private readonly List<(Regex Shape, string Route)> shapes;
    private readonly ConcurrentDictionary<string, JsonSchema> read = new();

    private OpenApiDocumentFile(string text)
    {
        Root = JsonDocument.Parse(text).RootElement;
        // The most literal route first, as routing has it.
        shapes = [.. Root.GetProperty("paths").EnumerateObject().Select(p => p.Name)
            .OrderBy(r => r.Count(c => c == '{')).Select(r => (new Regex("^" + Parameter().Replace(r, "[^/]+") + "$"), r))];
        var definitions = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["$id"] = Id };
        definitions["$defs"] = JsonNode.Parse(text.Replace("#/components/schemas/", Id + "#/$defs/", StringComparison.Ordinal))!
            ["components"]!["schemas"]!.DeepClone();
        // Callers may meet members that were added later; here every member must be in the document.
        foreach (var (_, schema) in definitions["$defs"]!.AsObject())
        {
            if (schema!["properties"] is not null) schema["additionalProperties"] = false;
        }

        SchemaRegistry.Global.Register(JsonSchema.FromText(definitions.ToJsonString()));
    }

    public static OpenApiDocumentFile Committed { get; } = new(File.ReadAllText(Path));

    public JsonElement Root { get; }

    /// <summary>Every operation: route and method.</summary>
    public IEnumerable<(string Route, string Method)> Operations => Root.GetProperty("paths").EnumerateObject()
        .SelectMany(path => path.Value.EnumerateObject().Select(operation => (path.Name, operation.Name)));

    /// <summary>The operation of a route.</summary>
    public JsonElement Operation(string route, string method) => Root.GetProperty("paths").GetProperty(route).GetProperty(method);

    /// <summary>The route that answers at a path; null when the document has none.</summary>
    public string? RouteOf(string path) => shapes.FirstOrDefault(s => s.Shape.IsMatch(path)).Route;

    /// <summary>The media types of a response.</summary>
    public IEnumerable<string> MediaTypes(string route, string method, string status) =>
        Content(route, method, status).EnumerateObject().Select(m => m.Name);

    /// <summary>The schema of a response body.</summary>
    public JsonElement ResponseSchema(string route, string method, string status, string mediaType) =>
        Content(route, method, status).GetProperty(mediaType).GetProperty("schema");

    /// <summary>The schema of a JSON request body.</summary>
    public JsonElement RequestSchema(string route) => Operation(route, "post")
        .GetProperty("requestBody").GetProperty("content").GetProperty("application/json").GetProperty("schema");

    /// <summary>A schema of the document.</summary>
    public JsonElement Resolve(JsonElement schema) => schema.TryGetProperty("$ref", out var reference)
        ? Root.GetProperty("components").GetProperty("schemas").GetProperty(reference.GetString()!.Split('/')[^1])
        : schema;

    /// <summary>Everything in which a value departs from a schema.</summary>
    public IReadOnlyList<string> Departures(JsonElement value, JsonElement schema)
    {
        var held = read.GetOrAdd(schema.GetRawText(), static text =>
            JsonSchema.FromText(text.Replace("#/components/schemas/", Id + "#/$defs/", StringComparison.Ordinal)));
        var node = JsonSerializer.SerializeToNode(value);
        if (held.Evaluate(node).IsValid) return [];
        var results = held.Evaluate(node, new() { OutputFormat = OutputFormat.List });
        return [.. results.Details.Where(d => d.HasErrors)
            .SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation} {e.Key}: {e.Value} ({d.EvaluationPath})"))
            .DefaultIfEmpty("departs")];
    }

    private JsonElement Content(string route, string method, string status) =>
        Operation(route, method).GetProperty("responses").GetProperty(status).GetProperty("content");

    [GeneratedRegex(@"\{[^}]+\}")]
    private static partial Regex Parameter();
}
