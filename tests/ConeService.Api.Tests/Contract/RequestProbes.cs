using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace ConeService.Api.Tests.Contract;

/// <summary>A request made from another by one change.</summary>
/// <param name="Key">The schema, the member and the bound that is tried; the same bound is met on several routes.</param>
/// <param name="Pointer">JSON pointer to what was changed.</param>
/// <param name="Body">The request.</param>
/// <param name="Allowed">True when the change keeps to the bound.</param>
/// <param name="Before">What stood there before; null when nothing did.</param>
internal sealed record Probe(string Key, string Pointer, JsonNode Body, bool Allowed, JsonNode? Before)
{
    /// <summary>True when a list was put there.</summary>
    public bool IsList => Pointer.Split('/')[1..].Aggregate<string, JsonNode?>(
        Body, (n, p) => n is JsonArray list ? list[int.Parse(p, CultureInfo.InvariantCulture)] : n?[p]) is JsonArray;
}

/// <summary>Makes of a request, by its schema, requests that just leave and just keep each bound that the schema declares.</summary>
internal static class RequestProbes
{
    private const double Little = 0.001;

    /// <summary>Every bound that a schema declares, wherever it stands under it.</summary>
    public static HashSet<string> Keys(OpenApiDocumentFile document, JsonElement schema)
    {
        var keys = new HashSet<string>(StringComparer.Ordinal);
        Walk(document, schema, null, "", [], keys, null!);
        return keys;
    }

    /// <summary>The probes of one request.</summary>
    public static List<Probe> Of(OpenApiDocumentFile document, JsonElement schema, JsonNode body)
    {
        var probes = new List<Probe>();
        Walk(document, schema, body, "", [], [], (key, pointer, allowed, change) =>
        {
            var copy = body.DeepClone();
            var parts = pointer.Split('/')[1..];
            var owner = parts[..^1].Aggregate(copy, (n, p) => n is JsonArray list ? list[Index(p)]! : n[p]!);
            var before = (owner as JsonObject)?[parts[^1]]?.DeepClone();
            change(owner, parts[^1]);
            probes.Add(new(key, pointer, copy, allowed, before));
        });
        return probes;
    }

    private delegate void Make(string key, string pointer, bool allowed, Action<JsonNode, string> change);

    private static void Walk(
        OpenApiDocumentFile document, JsonElement schema, JsonNode? node, string at, HashSet<string> seen, HashSet<string> keys, Make make)
    {
        var name = schema.TryGetProperty("$ref", out var reference) ? reference.GetString()!.Split('/')[^1] : "?";
        if (node is null && !seen.Add(name)) return;
        var own = document.Resolve(schema);
        void Tell(string key, string member, bool allowed, Action<JsonNode, string> change)
        {
            keys.Add(key);
            if (node is not null) make(key, $"{at}/{member}", allowed, change);
        }

        Tell($"{name} closed", "noSuchMember", false, (owner, member) => owner[member] = 1);
        foreach (var needed in Strings(own, "required"))
        {
            Tell($"{name}.{needed} required", needed, false, (owner, member) => owner.AsObject().Remove(member));
            Tell($"{name}.{needed} not null", needed, false, (owner, member) => owner[member] = null);
        }

        foreach (var property in own.GetProperty("properties").EnumerateObject())
        {
            var (inner, further) = Bare(property.Value);
            if (document.Resolve(inner).TryGetProperty("enum", out _)) inner = document.Resolve(inner);
            var key = $"{name}.{property.Name}";
            var child = node?[property.Name];
            foreach (var needed in further)
            {
                keys.Add($"{key}.{needed} required");
                if (child is null) continue;
                var pointer = $"{at}/{property.Name}/{needed}";
                make($"{key}.{needed} required", pointer, false, (owner, member) => owner.AsObject().Remove(member));
            }

            if (inner.TryGetProperty("$ref", out _))
            {
                if (node is null || child is not null) Walk(document, inner, child, $"{at}/{property.Name}", seen, keys, make);
            }
            else if (inner.TryGetProperty("items", out var items))
            {
                List(document, inner, items, key, property.Name, child?.AsArray(), Tell);
                if (!document.Resolve(items).TryGetProperty("properties", out _)) continue;
                if (node is null) Walk(document, items, null, "", seen, keys, make);
                for (var i = 0; i < Math.Min(child?.AsArray().Count ?? 0, 3); i++)
                    Walk(document, items, child![i], $"{at}/{property.Name}/{i}", seen, keys, make);
            }
            else
            {
                Scalar(inner, key, property.Name, Tell);
            }
        }
    }

    private static void Scalar(JsonElement schema, string key, string member, Make tell)
    {
        tell($"{key} type", member, false, (owner, m) => owner[m] = new JsonObject());
        if (schema.TryGetProperty("enum", out var words))
        {
            tell($"{key} enum", member, false, (owner, m) => owner[m] = "no-such-word");
            foreach (var word in words.EnumerateArray().Select(w => w.GetString()!))
                tell($"{key} enum {word}", member, true, (owner, m) => owner[m] = word);
        }

        if (schema.TryGetProperty("default", out var left))
            tell($"{key} default", member, true, (owner, m) => owner[m] = JsonNode.Parse(left.GetRawText()));
        if (schema.TryGetProperty("pattern", out _)) tell($"{key} pattern", member, false, (owner, m) => owner[m] = "~");
        var whole = schema.GetProperty("type").ToString().Contains("integer", StringComparison.Ordinal);
        if (whole) tell($"{key} whole", member, false, (owner, m) => owner[m] = 2.5);
        var step = whole ? 1 : Little;
        if (schema.TryGetProperty("minimum", out var least)) Bound("minimum", least.GetDouble() - step, least.GetDouble());
        if (schema.TryGetProperty("exclusiveMinimum", out var below))
            Bound("exclusiveMinimum", below.GetDouble(), below.GetDouble() + step);
        if (schema.TryGetProperty("maximum", out var most)) Bound("maximum", most.GetDouble() + step, most.GetDouble());

        void Bound(string bound, double outside, double inside)
        {
            tell($"{key} {bound}", member, false, (owner, m) => owner[m] = Number(outside, whole));
            tell($"{key} {bound} kept", member, true, (owner, m) => owner[m] = Number(inside, whole));
        }
    }

    private static void List(
        OpenApiDocumentFile document, JsonElement schema, JsonElement items, string key, string member, JsonArray? now, Make tell)
    {
        if (schema.TryGetProperty("minItems", out var least))
            tell($"{key} minItems", member, false, (owner, m) => owner[m] = Times(now, least.GetInt32() - 1));
        if (schema.TryGetProperty("maxItems", out var most))
        {
            var objects = document.Resolve(items).TryGetProperty("properties", out _);
            tell($"{key} maxItems", member, false, (owner, m) => owner[m] = Times(
                now is [_, ..] ? now : [objects ? new JsonObject() : ""], most.GetInt32() + 1));
        }

        if (!document.Resolve(items).TryGetProperty("enum", out var words)) return;
        tell($"{key} enum", member, false, (owner, m) => owner[m] = new JsonArray("no-such-word"));
        foreach (var word in words.EnumerateArray().Select(w => w.GetString()!))
            tell($"{key} enum {word}", member, true, (owner, m) => owner[m] = new JsonArray(word));
    }

    private static JsonArray Times(JsonArray? items, int count) =>
        [.. Enumerable.Range(0, items is [_, ..] ? count : 0).Select(i => items![i % items.Count]!.DeepClone())];

    // A member that may be null, or that needs more of its object than the object needs everywhere.
    private static (JsonElement Schema, IEnumerable<string> Further) Bare(JsonElement schema)
    {
        if (schema.TryGetProperty("oneOf", out var options)) return Bare(options[1]);
        return schema.TryGetProperty("allOf", out var all) ? (all[0], Strings(schema, "required")) : (schema, []);
    }

    private static JsonNode Number(double number, bool whole) => whole ? (int)number : number;

    private static int Index(string part) => int.Parse(part, CultureInfo.InvariantCulture);

    private static IEnumerable<string> Strings(JsonElement schema, string member) =>
        schema.TryGetProperty(member, out var list) ? list.EnumerateArray().Select(s => s.GetString()!) : [];
}
