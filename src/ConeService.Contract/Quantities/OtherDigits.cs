using System.Globalization;
using System.Text;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Quantities;

/// <summary>
/// Digits of other scripts, such as <c>٣</c> and <c>１２</c>, and those of mathematics. Numbers are read from 0 to 9 only: who meant
/// others is told how to write them.
/// </summary>
internal static class OtherDigits
{
    /// <summary>“Write …” with the digits 0 to 9; null when there are no others.</summary>
    public static Message? Meant(string? text)
    {
        if (text is null || text.Length > Answers.Told.MostCharacters) return null;
        var folded = new StringBuilder(text.Length);
        var any = false;
        foreach (var rune in text.EnumerateRunes())
        {
            var isOther = !rune.IsAscii && Rune.GetUnicodeCategory(rune) == UnicodeCategory.DecimalDigitNumber;
            any |= isOther;
            if (isOther) folded.Append((int)Rune.GetNumericValue(rune));
            else folded.Append(rune);
        }

        return any ? Message.Of("answers.write", ("text", folded.ToString())) : null;
    }
}
