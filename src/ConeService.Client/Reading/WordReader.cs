using System.Collections.Frozen;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace ConeService.Client.Reading;

/// <summary>Reads a word of a vocabulary. One that only a newer service knows is read as <see cref="Unknown"/>, which has no
/// name.</summary>
/// <typeparam name="T">The vocabulary.</typeparam>
internal sealed class WordReader<T> : JsonConverter<T>
    where T : struct, Enum
{
    private static readonly FrozenDictionary<string, T> Words =
        Enum.GetValues<T>().ToFrozenDictionary(v => JsonNamingPolicy.KebabCaseLower.ConvertName(v.ToString()), StringComparer.Ordinal);

    /// <summary>No value of the vocabulary.</summary>
    public static T Unknown { get; } = (T)Enum.ToObject(typeof(T), -1);

    /// <inheritdoc/>
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Words.TryGetValue(reader.GetString() ?? "", out var value) ? value : Unknown;

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => throw new NotSupportedException();
}
