using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using ConeService.Contract.Json;

namespace ConeService.Client.Reading;

/// <summary>
/// Reads answers back into the records of the contract: what the contract folds and flattens when it writes (ranges, details) is put
/// back into its members, °F twins are passed over, and members and words that only a newer service knows do no harm.
/// </summary>
internal static class AnswerReader
{
    private const string Min = "Min";

    private static readonly JsonSerializerOptions Options = Create();

    /// <summary>Reads an answer.</summary>
    /// <exception cref="JsonException">It is none of this type.</exception>
    public static T Read<T>(byte[] json)
    {
        var type = Options.GetTypeInfo(typeof(T));
        var node = JsonNode.Parse(json) ?? throw new JsonException("null is no answer.");
        Unfold(node, type);
        return (T)(node.Deserialize(type) ?? throw new JsonException("null is no answer."));
    }

    /// <summary>The version of the data package that a whole JSON object names; null when it names none.</summary>
    /// <exception cref="JsonException">It is not JSON, or not whole.</exception>
    public static string? DatasetVersion(byte[] json)
    {
        var reader = new Utf8JsonReader(json);
        string? version = null;
        while (reader.Read())
        {
            if (reader.TokenType == JsonTokenType.PropertyName && reader.CurrentDepth == 1 && reader.ValueTextEquals("datasetVersion"u8)
                && reader.Read() && reader.TokenType == JsonTokenType.String)
                version ??= reader.GetString();
        }

        return version;
    }

    private static void Unfold(JsonNode? node, JsonTypeInfo type)
    {
        if (node is JsonArray list && type is { Kind: JsonTypeInfoKind.Enumerable, ElementType: { } element })
        {
            var each = Options.GetTypeInfo(element);
            if (each.Kind == JsonTypeInfoKind.None) return;
            foreach (var item in list) Unfold(item, each);
        }
        else if (node is JsonObject thing && type.Kind == JsonTypeInfoKind.Object)
        {
            // What is flattened last is taken first: it is read from the members as they came.
            foreach (var member in type.Properties.Where(p => Has<FlatAttribute>(p) is not null))
            {
                var inner = thing.DeepClone().AsObject();
                var flattened = Options.GetTypeInfo(member.PropertyType);
                // Cautions that the detail tells in full are ids in what it is the detail of.
                foreach (var ids in flattened.Properties.Where(p => p.PropertyType == typeof(IReadOnlyList<string>)))
                {
                    if (inner[ids.Name] is JsonArray { Count: > 0 } told && told.All(t => t is JsonObject))
                        inner[ids.Name] = new JsonArray([.. told.Select(t => t!["id"]?.DeepClone())]);
                }

                Unfold(inner, flattened);
                thing[member.Name] = inner;
            }

            foreach (var member in type.Properties)
            {
                if (Has<RangeOfAttribute>(member) is { } range) Part(thing, member.Name[..^Min.Length], thing[range.Name]);
                else if (Has<FlatAttribute>(member) is null && thing[member.Name] is { } value)
                    Unfold(value, Options.GetTypeInfo(member.PropertyType));
            }
        }
    }

    private static void Part(JsonObject thing, string stem, JsonNode? range)
    {
        foreach (var end in (ReadOnlySpan<string>)[Min, "Best", "Max"])
        {
            var name = stem.Length == 0 ? end.ToLowerInvariant() : stem + end;
            thing[name] = (range as JsonObject)?[end.ToLowerInvariant()]?.DeepClone();
        }
    }

    private static T? Has<T>(JsonPropertyInfo member)
        where T : Attribute => member.AttributeProvider?.GetCustomAttributes(typeof(T), false) is [T found] ? found : null;

    private static JsonSerializerOptions Create()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Skip,
            TypeInfoResolver = ConeJsonContext.Default,
        };
        foreach (var converter in WordReaders.All) options.Converters.Add(converter);
        options.Converters.Add(new SentTextConverter());
        options.Converters.Add(new MessageConverter());
        options.Converters.Add(new AddressConverter());
        options.Converters.Add(new FindingReader());
        options.Converters.Add(new AssumptionReader());
        options.MakeReadOnly();
        return options;
    }
}
