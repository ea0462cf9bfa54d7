using System.Text.Json;

namespace ConeService.Firing.Datasets;

/// <summary>A value of a row as JSON: text, number, list of texts, or null.</summary>
internal static class CellJson
{
    private static readonly JsonElement Nothing = JsonSerializer.SerializeToElement<string?>(null);

    /// <summary>The value.</summary>
    public static JsonElement Of(object? value) => value switch
    {
        null => Nothing,
        string text => JsonSerializer.SerializeToElement(text),
        decimal number => JsonSerializer.SerializeToElement(number),
        int number => JsonSerializer.SerializeToElement(number),
        _ => JsonSerializer.SerializeToElement((string[])value),
    };
}
