using System.Text.Json;
using System.Text.Json.Serialization;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Json;

/// <summary>Writes a message as its words in the language of the reader; what is read is kept as it stands.</summary>
public sealed class MessageConverter : JsonConverter<Message>
{
    /// <inheritdoc/>
    public override Message? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Message.Verbatim(reader.GetString());

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Message value, JsonSerializerOptions options) =>
        writer.WriteStringValue(Speech.Current.Say(value));
}
