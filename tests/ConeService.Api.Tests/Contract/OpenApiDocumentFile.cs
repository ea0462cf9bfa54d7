using System.Text.Json;

namespace ConeService.Api.Tests.Contract;

/// <summary>The committed OpenAPI document, with just enough of JSON Schema 2020-12 to hold answers against it.</summary>
internal sealed class OpenApiDocumentFile
{
    private static readonly string Path = System.IO.Path.Combine(AppContext.BaseDirectory, "openapi/v1.json");

    private OpenApiDocumentFile(JsonElement root) => Root = root;

    public static OpenApiDocumentFile Committed { get; } = new(JsonDocument.Parse(File.ReadAllText(Path)).RootElement);

    public JsonElement Root { get; }

    /// <summary>Every operation: route and method.</summary>
    public IEnumerable<(string Route, string Method)> Operations => Root.GetProperty("paths").EnumerateObject()
        .SelectMany(path => path.Value.EnumerateObject().Select(operation => (path.Name, operation.Name)));

    /// <summary>The media types of a response.</summary>
    public IEnumerable<string> MediaTypes(string route, string method, string status) =>
        Content(route, method, status).EnumerateObject().Select(m => m.Name);

    /// <summary>The schema of a response body.</summary>
    public JsonElement ResponseSchema(string route, string method, string status, string mediaType) =>
        Content(route, method, status).GetProperty(mediaType).GetProperty("schema");

    private JsonElement Content(string route, string method, string status) => Root
        .GetProperty("paths").GetProperty(route).GetProperty(method).GetProperty("responses").GetProperty(status).GetProperty("content");

    /// <summary>Everything in which a value departs from a schema; unknown members count, as the document lists all.</summary>
    public IEnumerable<string> Departures(JsonElement value, JsonElement schema, string at = "$")
    {
        if (schema.TryGetProperty("$ref", out var reference))
        {
            var schemas = Root.GetProperty("components").GetProperty("schemas");
            return Departures(value, schemas.GetProperty(reference.GetString()!.Split('/')[^1]), at);
        }

        foreach (var any in new[] { "oneOf", "anyOf" })
        {
            if (schema.TryGetProperty(any, out var options))
            {
                var results = options.EnumerateArray().Select(o => Departures(value, o, at).ToList()).ToList();
                return results.Any(r => r.Count == 0) ? [] : results.MinBy(r => r.Count)!;
            }
        }

        return Plain(value, schema, at);
    }

    private IEnumerable<string> Plain(JsonElement value, JsonElement schema, string at)
    {
        if (schema.TryGetProperty("type", out var type))
        {
            List<string?> types = type.ValueKind == JsonValueKind.Array
                ? [.. type.EnumerateArray().Select(t => t.GetString())]
                : [type.GetString()];
            if (!types.Contains(TypeOf(value)) && !(TypeOf(value) == "integer" && types.Contains("number")))
                yield return $"{at} is {TypeOf(value)}, not {string.Join(" or ", types)}";
        }

        if (schema.TryGetProperty("enum", out var words) && value.ValueKind == JsonValueKind.String
            && !words.EnumerateArray().Any(w => w.GetString() == value.GetString()))
        {
            yield return $"{at} is “{value}”, which is not in the enum";
        }

        if (value.ValueKind == JsonValueKind.Array && schema.TryGetProperty("items", out var items))
        {
            foreach (var (element, index) in value.EnumerateArray().Select((e, i) => (e, i)))
            {
                foreach (var departure in Departures(element, items, $"{at}[{index}]")) yield return departure;
            }
        }

        if (value.ValueKind != JsonValueKind.Object || !schema.TryGetProperty("properties", out var properties)) yield break;
        foreach (var required in schema.TryGetProperty("required", out var list) ? list.EnumerateArray() : default)
        {
            if (!value.TryGetProperty(required.GetString()!, out _)) yield return $"{at} lacks {required}";
        }

        foreach (var member in value.EnumerateObject())
        {
            if (!properties.TryGetProperty(member.Name, out var property)) yield return $"{at}.{member.Name} is not in the document";
            else foreach (var departure in Departures(member.Value, property, $"{at}.{member.Name}")) yield return departure;
        }
    }

    private static string TypeOf(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => "object",
        JsonValueKind.Array => "array",
        JsonValueKind.String => "string",
        JsonValueKind.Number => value.TryGetInt64(out _) ? "integer" : "number",
        JsonValueKind.True or JsonValueKind.False => "boolean",
        _ => "null",
    };
}
