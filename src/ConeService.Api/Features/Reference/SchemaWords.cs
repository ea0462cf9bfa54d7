using System.Globalization;
using System.Text.Json;
using ConeService.Api.Http;

namespace ConeService.Api.Features.Reference;

/// <summary>What a schema of the document asks for, in words.</summary>
/// <param name="root">The document.</param>
internal sealed class SchemaWords(JsonElement root)
{
    private const string Prefix = "#/components/schemas/";

    private readonly List<string> met = [];

    /// <summary>Names of the schemas that were linked to, in the order in which they were met; reading one adds to them.</summary>
    public IReadOnlyList<string> Met => met;

    /// <summary>A schema by name.</summary>
    public JsonElement Named(string name) => root.GetProperty("components").GetProperty("schemas").GetProperty(name);

    /// <summary>The name of the schema referred to; null where it stands here itself.</summary>
    public static string? Reference(JsonElement schema) =>
        schema.TryGetProperty("$ref", out var reference) ? reference.GetString()![Prefix.Length..] : null;

    /// <summary>Its type as markup, with links to what is told below.</summary>
    public string Type(JsonElement schema)
    {
        if (Reference(schema) is { } name)
        {
            if (!met.Contains(name)) met.Add(name);
            return $"<a href=\"#{name}\">{name}</a>";
        }

        foreach (var joined in (string[])["oneOf", "anyOf", "allOf"])
        {
            if (schema.TryGetProperty(joined, out var choices)) return string.Join(" or ", choices.EnumerateArray().Select(Type));
        }

        if (schema.TryGetProperty("enum", out var words) && words.ValueKind == JsonValueKind.Array) return Words(words);
        if (!schema.TryGetProperty("type", out var type)) return "anything";
        var types = type.ValueKind == JsonValueKind.Array ? type.EnumerateArray().Select(t => t.GetString()!) : [type.GetString()!];
        return string.Join(" or ", types.OrderBy(t => t == "null").Select(t => t switch
        {
            "array" => "list of " + (schema.TryGetProperty("items", out var items) ? Type(items) : "anything"),
            "string" => "text",
            _ => t,
        }));
    }

    /// <summary>The words of an enumeration as markup.</summary>
    public static string Words(JsonElement words) =>
        string.Join(", ", words.EnumerateArray().Select(w => $"<code>{HtmlPage.Encode(w.ToString())}</code>"));

    /// <summary>Its description, and within which bounds it must lie.</summary>
    public static string Told(JsonElement schema)
    {
        var text = schema.TryGetProperty("description", out var told) ? told.GetString()!.TrimEnd('.') + "." : "";
        var bounds = Bounds(schema);
        return HtmlPage.Encode(bounds.Length == 0 ? text : $"{text} {bounds}.".Trim());
    }

    private static string Bounds(JsonElement schema)
    {
        string? Of(string name) => schema.TryGetProperty(name, out var value) ? value.ToString() : null;
        List<string> parts = [];
        foreach (var (least, most, unit) in ((string, string, string)[])
            [("minimum", "maximum", ""), ("minLength", "maxLength", " letters"), ("minItems", "maxItems", " entries")])
        {
            var (low, high) = (Of(least), Of(most));
            if (low is not null && high is not null) parts.Add(string.Create(CultureInfo.InvariantCulture, $"From {low} to {high}{unit}"));
            else if (low is not null) parts.Add($"At least {low}{unit}");
            else if (high is not null) parts.Add($"At most {high}{unit}");
        }

        if (Of("pattern") is { } pattern) parts.Add("Of the pattern " + pattern);
        return string.Join("; ", parts);
    }
}
