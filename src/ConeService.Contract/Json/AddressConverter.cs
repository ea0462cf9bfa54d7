using System.Text.Json;
using System.Text.Json.Serialization;
using ConeService.Contract.Answers;

namespace ConeService.Contract.Json;

/// <summary>Writes an address as its reader reaches it; what is read is kept as it stands.</summary>
public sealed class AddressConverter : JsonConverter<Address>
{
    /// <inheritdoc/>
    public override Address? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.GetString() is { } path ? new(path) : null;

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Address value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString());
}
