using System.Text.Json;
using System.Text.Json.Serialization;
using ConeService.Data;

namespace ConeService.Client.Reading;

/// <summary>Reads a word of a vocabulary. One that only a newer service knows is read as <see cref="Unknown"/>, which has no
/// name. It holds no collection over the vocabulary: that would be compiled anew for each of them, ahead of time as at a start.</summary>
/// <typeparam name="T">The vocabulary.</typeparam>
internal sealed class WordReader<T> : JsonConverter<T>
    where T : struct, Enum
{
    /// <summary>No value of the vocabulary.</summary>
    public static T Unknown { get; } = (T)Enum.ToObject(typeof(T), -1);

    /// <inheritdoc/>
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        EnumWords.TryRead(reader.GetString(), out T value) ? value : Unknown;

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => throw new NotSupportedException();
}
