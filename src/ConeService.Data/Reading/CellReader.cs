using System.Globalization;
using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>Turns the text of a cell into the value of its field's type.</summary>
internal static partial class CellReader
{
    /// <summary>The value, or null with the reason why the text is none.</summary>
    public static object? Read(string text, FieldSchema field, out string? reason)
    {
        switch (field.Type)
        {
            case FieldType.Number:
                // Digits are kept: 1.50 stays 1.50, since the last digit says how finely a value was printed.
                reason = "must be a decimal number such as 1222 or 0.5, without exponent, plus sign, separators or leading zeros";
                return PlainNumber().IsMatch(text)
                    && decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture,
                    out var number) ? number : null;
            case FieldType.Integer:
                reason = "must be a whole number such as 12";
                return PlainInteger().IsMatch(text)
                    && int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var integer) ? integer : null;
            case FieldType.List:
                return List(text, field.Delimiter, out reason);
            default:
                reason = null;
                return text;
        }
    }

    private static string[]? List(string text, char delimiter, out string? reason)
    {
        var items = text.Split(delimiter);
        reason = $"must be items separated by '{delimiter}', none blank, none twice";
        return items.All(i => i.Length > 0 && i == i.Trim()) && items.Distinct(StringComparer.Ordinal).Count() == items.Length
            ? items
            : null;
    }

    [GeneratedRegex(@"^-?(0|[1-9][0-9]*)(\.[0-9]+)?\z")]
    private static partial Regex PlainNumber();

    [GeneratedRegex(@"^-?(0|[1-9][0-9]*)\z")]
    private static partial Regex PlainInteger();
}
