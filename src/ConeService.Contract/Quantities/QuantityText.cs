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

    [GeneratedRegex(@"^(?:[0-9]|[.,\s']+[0-9]|[eE][+\u2212-]?[0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex NumberGoesOn();

    [GeneratedRegex(@"^\s*[+\u2212-]?[0-9]+,[0-9]+(?![0-9.,])", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"^\s*[+\u2212-]?[0-9.]+[eE][+\u2212-]?[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex Exponent();

    [GeneratedRegex(@"[0-9]{13}", RegexOptions.CultureInvariant)]
    private static partial Regex ManyDigits();

    /// <summary>Number and lower-case unit without blanks and degree signs; false when there is no number in front.</summary>
    public static bool TrySplit(string? text, out decimal number, out string unit)
    {
        number = 0;
        unit = "";
        if (text is null || text.AsSpan().Trim().Length > Longest) return false;
        var match = Shape().Match(text.Trim());
        // What goes on with a digit, a comma or an exponent is a number that is not read to its end, and no unit.
        if (!match.Success || NumberGoesOn().IsMatch(match.Groups[2].ValueSpan)) return false;
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
        _ when text.Length <= Longest && DecimalComma().IsMatch(text) =>
            Message.Of("answers.write", ("text", text.Trim().Replace(',', '.'))),
        _ when text.Contains(',', StringComparison.Ordinal) => Message.Of("quantities.number-with-point"),
        _ when text.Contains('%', StringComparison.Ordinal) => Message.Of("quantities.percent-sign"),
        _ when text.Length <= Longest && Exponent().IsMatch(text) => Message.Of("quantities.no-exponent"),
        _ when ManyDigits().IsMatch(text) => Message.Of("quantities.too-many-digits"),
        _ when text.Any(char.IsDigit) => Message.Of("quantities.number-first"),
        _ => null,
    };
}
