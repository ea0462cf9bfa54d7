using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Quantities;

/// <summary>Reads quantities of a request body: text with its own unit, or a number in the request's units.</summary>
public static class QuantityInput
{
    /// <summary>A temperature as text with its unit, ready to be parsed; null when absent or refused.</summary>
    /// <param name="sent">The member as sent.</param>
    /// <param name="units">The request's units, C or F; null when it names none.</param>
    /// <param name="field">JSON pointer or column, for findings.</param>
    /// <param name="findings">Anything wrong is added here.</param>
    public static string? Temperature(SentText sent, string? units, string field, ICollection<Finding> findings)
    {
        if (sent.IsAbsent || WithUnit(sent, units, "") is not null) return WithUnit(sent, units, "");
        findings.Add(sent.Kind == SentKind.Number
            ? new(
                FindingCodes.TemperatureUnitMissing, field, sent.Text,
                Message.Of("quantities.temperature-unit-missing", ("text", sent.Text)), Units(sent, ""))
            : new(
                FindingCodes.TemperatureUnreadable, field, sent.Text,
                Message.Of("quantities.temperature-is-text"), Message.Verbatim(["\"60C\""])));
        return null;
    }

    /// <summary>A heating rate as text with its unit, ready to be parsed; a bare number is per hour. Null when absent or refused.</summary>
    /// <param name="sent">The member as sent.</param>
    /// <param name="units">The request's units, C or F; null when it names none.</param>
    /// <param name="field">JSON pointer or column, for findings.</param>
    /// <param name="findings">Anything wrong is added here.</param>
    public static string? Rate(SentText sent, string? units, string field, ICollection<Finding> findings)
    {
        const string perHour = "/h";
        if (sent.IsAbsent || WithUnit(sent, units, perHour) is not null) return WithUnit(sent, units, perHour);
        findings.Add(sent.Kind == SentKind.Number
            ? new(
                FindingCodes.RateUnitMissing, field, sent.Text,
                Message.Of("quantities.rate-unit-missing", ("text", sent.Text)), Units(sent, perHour))
            : new(FindingCodes.RateUnreadable, field, sent.Text, Message.Of("quantities.rate-is-text"), Message.Verbatim(["\"60C/h\""])));
        return null;
    }

    private const int LongestPlain = 12;

    private static string? WithUnit(SentText sent, string? units, string suffix) => sent switch
    {
        { IsAbsent: true } => null,
        { Kind: SentKind.Text } => sent.Text,
        { Kind: SentKind.Number } when units is "C" or "F" => Plain(sent.Text!) + units + suffix,
        _ => null,
    };

    // JSON writes a number with an exponent or with all the digits that binary has; to a billionth of a degree it is the same.
    private static string Plain(string number) =>
        number.Length is > 0 and <= LongestPlain && !number.Contains('e', StringComparison.OrdinalIgnoreCase)
            ? number
            : decimal.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
                ? value.ToString("0.#########", CultureInfo.InvariantCulture)
                : number;

    private static IReadOnlyList<Message> Units(SentText sent, string suffix) =>
    [
        Message.Verbatim($"\"{sent.Text}C{suffix}\""), Message.Verbatim($"\"{sent.Text}F{suffix}\""),
        Message.Of("quantities.units-beside-lines"),
    ];
}
