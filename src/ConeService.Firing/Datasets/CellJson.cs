using System.Text.Json;
using ConeService.Contract.Json;

namespace ConeService.Firing.Datasets;

/// <summary>A value of a row as JSON: text, number, list of texts, or null.</summary>
internal static class CellJson
{
    private static readonly JsonElement Nothing = JsonElement.Parse("null");

    /// <summary>The value.</summary>
    public static JsonElement Of(object? value) => value switch
    {
        null => Nothing,
        string text => JsonSerializer.SerializeToElement(text, ConeJsonContext.Default.String),
        decimal number => JsonSerializer.SerializeToElement(number, ConeJsonContext.Default.Decimal),
        int number => JsonSerializer.SerializeToElement(number, ConeJsonContext.Default.Int32),
        _ => JsonSerializer.SerializeToElement((string[])value, ConeJsonContext.Default.StringArray),
    };
}
