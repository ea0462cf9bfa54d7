using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Quantities;

/// <summary>
/// Numbers such as <c>1,213</c>: one and a bit where the comma is decimal, twelve hundred where it separates thousands. They are
/// never guessed.
/// </summary>
public static class AmbiguousNumber
{
    private const int Thousands = 3;

    /// <summary>
    /// True when the mark could stand for decimals and for thousands: one to three digits before it, the first not 0, and exactly
    /// three after it.
    /// </summary>
    /// <param name="text">A number, alone or with its unit behind it.</param>
    /// <param name="mark">Comma or point.</param>
    /// <param name="number">The number without what stands behind it.</param>
    public static bool Is(ReadOnlySpan<char> text, char mark, out ReadOnlySpan<char> number)
    {
        number = text.Trim();
        var digits = number.TrimStart("+-\u2212");
        var whole = Digits(digits);
        if (whole is 0 or > Thousands || digits[0] == '0' || whole == digits.Length || digits[whole] != mark) return false;
        var rest = digits[(whole + 1)..];
        var after = Digits(rest);
        number = number[..^(rest.Length - after)];
        return after == Thousands && !(after < rest.Length && rest[after] is ',' or '.');
    }

    /// <summary>What is told of such a number; null when the text is none.</summary>
    /// <param name="field">Where it stands.</param>
    /// <param name="text">The text as sent, with its unit if it has one.</param>
    /// <param name="mark">Comma or point.</param>
    public static Finding? Finding(string field, string? text, char mark = ',')
    {
        if (!Is(text, mark, out var number)) return null;
        var unit = text.AsSpan().Trim()[number.Length..];
        var digits = number.ToString();
        var point = $"{digits.Replace(mark, '.')}{unit}";
        var none = $"{digits.Replace(mark.ToString(), "", StringComparison.Ordinal)}{unit}";
        return new(
            FindingCodes.NumberAmbiguous, field, text,
            Message.Of("quantities.ambiguous", ("text", text!.Trim()), ("decimal", point), ("thousands", none)),
            Message.Verbatim([point, none]), Message.Of("quantities.number-with-point"));
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        var end = text.IndexOfAnyExceptInRange('0', '9');
        return end < 0 ? text.Length : end;
    }
}
