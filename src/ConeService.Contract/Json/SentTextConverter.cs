using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using ConeService.Contract.Answers;

namespace ConeService.Contract.Json;

/// <summary>Keeps a member of a request as it was sent, whatever it is; what it should have been is decided later.</summary>
public sealed class SentTextConverter : JsonConverter<SentText>
{
    /// <inheritdoc/>
    public override bool HandleNull => true;

    /// <inheritdoc/>
    public override SentText Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.Null:
                return default;
            case JsonTokenType.String:
                return SentText.Of(reader.GetString());
            case JsonTokenType.Number:
                // The digits as sent: 6.0 must not become 6.
                return new(Encoding.UTF8.GetString(reader.ValueSpan), SentKind.Number);
            default:
                using (var document = JsonDocument.ParseValue(ref reader))
                {
                    return new(document.RootElement.GetRawText(), SentKind.Other);
                }
        }
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, SentText value, JsonSerializerOptions options)
    {
        if (value.Text is null) writer.WriteNullValue();
        else if (value.Kind == SentKind.Text) writer.WriteStringValue(value.Text);
        else writer.WriteRawValue(value.Text);
    }
}
