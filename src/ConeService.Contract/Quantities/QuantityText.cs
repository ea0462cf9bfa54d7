using System.Globalization;
using System.Text.RegularExpressions;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Quantities;

/// <summary>Splits a quantity such as <c>108 °F/h</c> into its number and its unit.</summary>
internal static partial class QuantityText
{
    /// <summary>
    /// A number and its unit. The minus sign may be the one of a page, U+2212. Of digits only 0 to 9: the parser knows no others.
    /// </summary>
    public const string Pattern = @"^\s*([+\u2212-]?[0-9]{1,12}(?:\.[0-9]{1,12})?)\s*(.{0,16})\s*$";

    // More than number and unit need, blanks included: beyond it the blanks alone would cost the square of their number.
    private const int Longest = 64;

    [GeneratedRegex(Pattern, RegexOptions.CultureInvariant)]
    private static partial Regex Shape();

    /// <summary>Number and lower-case unit without blanks and degree signs; false when there is no number in front.</summary>
    public static bool TrySplit(string? text, out decimal number, out string unit)
    {
        number = 0;
        unit = "";
        if (text is null || text.AsSpan().Trim().Length > Longest) return false;
        var match = Shape().Match(text.Trim());
        if (!match.Success) return false;
        number = decimal.Parse(match.Groups[1].Value.Replace('\u2212', '-'), NumberStyles.Float, CultureInfo.InvariantCulture);
        unit = match.Groups[2].Value
            .Replace(" ", "", StringComparison.Ordinal)
            .Replace("°", "", StringComparison.Ordinal)
            .Replace("º", "", StringComparison.Ordinal)
            .Replace("deg", "", StringComparison.OrdinalIgnoreCase)
            .ToLowerInvariant();
        unit = unit switch { "℃" => "c", "℉" => "f", "celsius" => "c", "fahrenheit" => "f", "kelvin" => "k", _ => unit };
        unit = unit.Replace("/hour", "/h", StringComparison.Ordinal).Replace("/hr", "/h", StringComparison.Ordinal);
        return true;
    }

    /// <summary>A guess at why a text was not a number with a unit.</summary>
    public static Message? LikelyMistake(string? text) => text switch
    {
        null or "" => null,
        _ when OtherDigits.Meant(text) is { } meant => meant,
        _ when text.Contains(',', StringComparison.Ordinal) => Message.Of("quantities.number-with-point"),
        _ when text.Contains('%', StringComparison.Ordinal) => Message.Of("quantities.percent-sign"),
        _ when text.Any(char.IsDigit) => Message.Of("quantities.number-first"),
        _ => null,
    };
}
