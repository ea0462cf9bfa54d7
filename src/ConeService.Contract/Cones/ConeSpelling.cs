using System.Globalization;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Cones;

/// <summary>
/// Reads the spellings of a cone that people write: <c>06</c>, <c>o6</c>, <c>^6</c>, <c>cone 6</c>, <c>Δ6</c>,
/// <c>05½</c>, <c>05.5</c>, <c>05 1/2</c>, <c>6a</c>. Whether the cone exists is for the scale to say.
/// </summary>
public static partial class ConeSpelling
{
    /// <summary>
    /// The spellings as a regular expression that browsers read too. Prefix; zero or the letter o that people type for it; number; half;
    /// Seger letter.
    /// </summary>
    public const string Pattern =
        @"^\s*(?:[Cc][Oo][Nn][Ee]|\^|[Δ∆△])?\s*(?<zero>[0oO])?(?<number>[1-9][0-9]?)(?<half>\.5|½|\s+½|[\s-]+1/2)?(?<letter>[aA])?\s*$";

    // More than any spelling needs, blanks included: beyond it the blanks alone would cost the square of their number.
    private const int Longest = 64;

    [GeneratedRegex(Pattern, RegexOptions.CultureInvariant)]
    private static partial Regex Shape();

    /// <summary>Reads a cone.</summary>
    /// <param name="text">The text.</param>
    /// <param name="cone">The cone.</param>
    /// <param name="finding">What is wrong, with an empty field name and no list of allowed cones; null on success.</param>
    public static bool TryRead(string? text, out Cone cone, out Finding? finding)
    {
        cone = default;
        finding = null;
        var match = Shape().Match(IsTooLong(text) ? "" : text?.Trim() ?? "");
        if (match.Success)
        {
            cone = Cone.FromParts(
                match.Groups["zero"].Success,
                int.Parse(match.Groups["number"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture),
                match.Groups["half"].Success,
                match.Groups["letter"].Success);
            return true;
        }

        finding = Explain(text);
        return false;
    }

    [GeneratedRegex(
        @"^(?:cone|\^|[Δ∆△])?\s*(?<sign>[-−])?(?<digits>[0oO]*[0-9]*)(?<fraction>\.[0-9]+)?$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NumberLike();

    private static bool IsTooLong(string? text) => text.AsSpan().Trim().Length > Longest;

    private static Finding Explain(string? text)
    {
        var match = NumberLike().Match(IsTooLong(text) ? "" : text?.Trim() ?? "");
        var digits = match.Groups["digits"].Value.Replace('o', '0').Replace('O', '0');
        if (!match.Success || digits.Length == 0)
        {
            return new(
                FindingCodes.ConeUnreadable, "", text, Message.Of("cones.unreadable", ("text", text)),
                Message.Verbatim(["06", "o6", "^6", "cone 6", "Δ6", "05.5", "05½", "05 1/2"]), OtherDigits.Meant(text));
        }

        var number = digits.TrimStart('0');
        if (match.Groups["sign"].Success) return Signed(text, number);
        if (number.Length == 0)
        {
            return new(
                FindingCodes.ConeZero, "", text, Message.Of("cones.zero"), Message.Verbatim(["01", "1"]), Message.Of("cones.zero-between"));
        }

        if (match.Groups["fraction"].Success)
        {
            var whole = digits[0] == '0' ? "0" + number : number;
            return match.Groups["fraction"].Value.Trim('.').All(c => c == '0')
                ? new(
                    FindingCodes.ConeUnreadable, "", text, Message.Of("cones.number-not-cone", ("text", text)), Message.Verbatim([whole]),
                    Message.Of("cones.spreadsheet"))
                : new(
                    FindingCodes.ConeUnknown, "", text, Message.Of("cones.unknown-fraction", ("text", text)), Message.Verbatim([whole]),
                    Message.Of("cones.between-two"));
        }

        return digits.StartsWith("00", StringComparison.Ordinal)
            ? new(
                FindingCodes.ConeUnreadable, "", text, Message.Of("cones.zero-too-many", ("text", text)), Message.Verbatim(["0" + number]))
            : new(FindingCodes.ConeUnknown, "", text, Message.Of("cones.unknown", ("cone", text)), []);
    }

    private static Finding Signed(string? text, string number) => number.Length == 0
        ? new(FindingCodes.ConeZero, "", text, Message.Of("cones.zero-signed"), Message.Verbatim(["01", "1"]))
        : new(
            FindingCodes.ConeUnreadable, "", text, Message.Of("cones.minus-sign"), Message.Verbatim(["0" + number, number]),
            Message.Of("cones.minus-sign-meant", ("number", number)));
}
