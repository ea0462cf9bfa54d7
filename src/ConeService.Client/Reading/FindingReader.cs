using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using ConeService.Contract.Answers;
using ConeService.Contract.Texts;

namespace ConeService.Client.Reading;

/// <summary>Reads a finding back from its JSON, in which its place stands as pointer, parameter or line.</summary>
internal sealed class FindingReader : JsonConverter<Finding>
{
    /// <summary>A finding.</summary>
    public static Finding Read(JsonElement json) => new(
        json.GetProperty("code").GetString()!,
        Place(json),
        Text(json, "value"),
        Message.Verbatim(json.GetProperty("message").GetString()!),
        json.TryGetProperty("allowed", out var allowed) && allowed.ValueKind == JsonValueKind.Array
            ? Message.Verbatim(allowed.EnumerateArray().Select(a => a.GetString()!))
            : [],
        Message.Verbatim(Text(json, "likelyMistake")));

    /// <summary>The place that something speaks of: a parameter, a pointer, or “line 3, cone”.</summary>
    public static string Place(JsonElement json)
    {
        if (json.TryGetProperty("line", out var line) && line.ValueKind == JsonValueKind.Number)
        {
            var number = line.GetInt32().ToString(CultureInfo.InvariantCulture);
            return Text(json, "column") is { } column ? $"line {number}, {column}" : $"line {number}";
        }

        return Text(json, "pointer") ?? Text(json, "parameter") ?? "";
    }

    /// <inheritdoc/>
    public override Finding Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var document = JsonDocument.ParseValue(ref reader);
        return Read(document.RootElement);
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Finding value, JsonSerializerOptions options) => throw new NotSupportedException();

    private static string? Text(JsonElement json, string name) =>
        json.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
}

/// <summary>Reads an assumption back from its JSON, in which its place stands as pointer or parameter.</summary>
internal sealed class AssumptionReader : JsonConverter<Assumption>
{
    /// <inheritdoc/>
    public override Assumption Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var document = JsonDocument.ParseValue(ref reader);
        var json = document.RootElement;
        return new(
            FindingReader.Place(json), json.GetProperty("value").GetString()!, Message.Verbatim(json.GetProperty("reason").GetString()!));
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Assumption value, JsonSerializerOptions options) =>
        throw new NotSupportedException();
}
