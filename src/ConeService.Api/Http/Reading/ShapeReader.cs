using System.Buffers;
using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Loads;

namespace ConeService.Api.Http.Reading;

/// <summary>
/// Reads a body that is JSON and not of the form that its request has: everything that is wrong with the form is told at its place, taken
/// as it was surely meant or left out, and the rest read. Only bodies that can't be read as they are come here.
/// </summary>
internal sealed class ShapeReader : IDisposable
{
    private const string Glaze = "glaze";

    private readonly ArrayBufferWriter<byte> read = new();
    private readonly Utf8JsonWriter writer;
    private readonly Stack<string> place = new();
    private readonly HttpContext context;

    private ShapeReader(HttpContext context)
    {
        this.context = context;
        writer = new(read, new JsonWriterOptions { SkipValidation = true });
    }

    /// <summary>Reads the body.</summary>
    /// <param name="body">The body.</param>
    /// <param name="failure">What the strict reader said of it; null where it read nothing.</param>
    /// <param name="type">The request.</param>
    /// <param name="context">The request over HTTP, whose mistakes are told.</param>
    public static T Read<T>(ReadOnlyMemory<byte> body, JsonException? failure, JsonTypeInfo<T> type, HttpContext context)
    {
        using var reader = new ShapeReader(context);
        try
        {
            using var document = JsonDocument.Parse(body, new JsonDocumentOptions { MaxDepth = ConeJson.Options.MaxDepth });
            reader.Root(document.RootElement, type);
            reader.writer.Flush();
            return JsonSerializer.Deserialize(reader.read.WrittenSpan, type)!;
        }
        catch (JsonException malformed)
        {
            Mistakes.Unreadable(context, JsonFindings.Of(First(failure, malformed), type));
        }
        catch (InvalidOperationException)
        {
            // Half a character in a name or a text, which no text can hold.
            Mistakes.Unreadable(context, JsonFindings.Of(failure ?? new JsonException(), type));
        }

        // What else is wrong, such as a parameter of the query, is told beside it.
        return JsonSerializer.Deserialize("{}", type)!;
    }

    public void Dispose() => writer.Dispose();

    // The strict reader knows in which member it was when the JSON broke; where it gave up before, for the form, that is not told.
    private static JsonException First(JsonException? strict, JsonException malformed) =>
        strict is not null && strict.LineNumber == malformed.LineNumber && strict.BytePositionInLine == malformed.BytePositionInLine
            ? strict
            : malformed;

    private void Root(JsonElement sent, JsonTypeInfo type)
    {
        if (sent.ValueKind == JsonValueKind.Object)
        {
            Members(sent, type);
            return;
        }

        Tell(ShapeFindings.NoObject(sent, "", type), true);
        writer.WriteStartObject();
        writer.WriteEndObject();
    }

    private void Value(JsonElement sent, JsonTypeInfo type, JsonPropertyInfo? member)
    {
        switch (type.Kind, sent.ValueKind)
        {
            case (_, JsonValueKind.Null):
            case (not (JsonTypeInfoKind.Object or JsonTypeInfoKind.Enumerable or JsonTypeInfoKind.None), _):
                Keep(sent);
                break;
            case (JsonTypeInfoKind.Object, JsonValueKind.Object):
                Members(sent, type);
                break;
            case (JsonTypeInfoKind.Object, JsonValueKind.String) when type.Type == typeof(CoatRequest):
                // A coat that is a text alone is the id of it.
                writer.WriteStartObject();
                writer.WritePropertyName(Glaze);
                Keep(sent);
                writer.WriteEndObject();
                break;
            case (JsonTypeInfoKind.Enumerable, JsonValueKind.Array):
                Entries(sent, type);
                break;
            case (JsonTypeInfoKind.Object, _):
                LeaveOut(ShapeFindings.NoObject(sent, Pointer(), type));
                break;
            case (JsonTypeInfoKind.Enumerable, _):
                LeaveOut(ShapeFindings.NoList(sent, Pointer()));
                break;
            default:
                Single(sent, Nullable.GetUnderlyingType(type.Type) ?? type.Type, member);
                break;
        }
    }

    private void Members(JsonElement sent, JsonTypeInfo type)
    {
        writer.WriteStartObject();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in sent.EnumerateObject())
        {
            var name = entry.Name;
            place.Push(name);
            if (!seen.Add(name)) Tell(JsonFindings.Repeated(Pointer(), name), false);
            else if (type.Properties.FirstOrDefault(p => p.Name == name) is not { } member)
                Unknown(name, sent, type);
            else
            {
                writer.WritePropertyName(name);
                Value(entry.Value, type.Options.GetTypeInfo(member.PropertyType), member);
            }

            place.Pop();
        }

        writer.WriteEndObject();
    }

    private void Unknown(string name, JsonElement owner, JsonTypeInfo type)
    {
        var near = JsonFindings.Near(name, type);
        var at = Pointer();
        Mistakes.Misspelt(
            context, JsonFindings.Unknown(at, name, type),
            near is null || owner.TryGetProperty(near, out _) ? null : $"{at[..at.LastIndexOf('/')]}/{near}");
    }

    private void Entries(JsonElement sent, JsonTypeInfo type)
    {
        var element = type.Options.GetTypeInfo(type.ElementType!);
        writer.WriteStartArray();
        var index = 0;
        foreach (var entry in sent.EnumerateArray())
        {
            place.Push(RequestCheck.Text(index++)!);
            Value(entry, element, null);
            place.Pop();
        }

        writer.WriteEndArray();
    }

    private void Single(JsonElement sent, Type type, JsonPropertyInfo? member)
    {
        if (type == typeof(string))
        {
            if (sent.ValueKind == JsonValueKind.String) Keep(sent);
            else LeaveOut(ShapeFindings.NoText(sent, Pointer(), member));
        }
        else if (type == typeof(bool))
        {
            if (sent.ValueKind is JsonValueKind.True or JsonValueKind.False) Keep(sent);
            else if (sent.ValueKind == JsonValueKind.String && bool.TryParse(sent.GetString(), out var meant))
            {
                Tell(ShapeFindings.NoBoolean(sent, Pointer()), false);
                writer.WriteBooleanValue(meant);
            }
            else LeaveOut(ShapeFindings.NoBoolean(sent, Pointer()));
        }
        else if (type == typeof(double))
        {
            if (sent.ValueKind == JsonValueKind.Number) Keep(sent);
            else if (ShapeFindings.Quoted(sent) is { } meant)
            {
                Tell(ShapeFindings.NoNumber(sent, Pointer()), false);
                writer.WriteNumberValue(meant);
            }
            else LeaveOut(ShapeFindings.NoNumber(sent, Pointer()));
        }
        else
        {
            // Kept as it was sent, and judged by its reader.
            Keep(sent);
        }
    }

    private void Tell(Finding finding, bool isLeftOut) => Mistakes.Add(context, finding, isLeftOut);

    private void Keep(JsonElement sent) => writer.WriteRawValue(JsonMarshal.GetRawUtf8Value(sent), skipInputValidation: true);

    private void LeaveOut(Finding finding)
    {
        Tell(finding, true);
        writer.WriteNullValue();
    }

    // RFC 6901: ~ and / within a name are escaped.
    private string Pointer() => string.Concat(place.Reverse().Select(p =>
        "/" + p.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)));
}
