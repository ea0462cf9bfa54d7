using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Colours;

/// <summary>Reads a percentage from a query or a body: <c>0.5</c> or <c>0.5 %</c>.</summary>
internal static class PercentInput
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    /// <summary>Reads a percentage above 0 and up to 100.</summary>
    /// <param name="sent">The value as sent; absent gives null.</param>
    /// <param name="field">The parameter or JSON pointer, for the finding.</param>
    /// <param name="findings">What is wrong is added here.</param>
    public static decimal? Read(SentText sent, string field, ICollection<Finding> findings)
    {
        if (sent.IsAbsent) return null;
        var text = sent.Text!.Trim().TrimEnd('%').TrimEnd();
        if (sent.Kind == SentKind.Other || !decimal.TryParse(text, Plain, CultureInfo.InvariantCulture, out var percent))
        {
            findings.Add(new(
                FindingCodes.PercentUnreadable, field, sent.Text, Message.Of("colours.percent-unreadable"),
                Message.Verbatim(["0.5", "0.5 %"]),
                text.Contains(',') ? Message.Of("colours.decimal-point") : null));
            return null;
        }

        if (percent is > 0 and <= 100) return percent;
        findings.Add(new(
            FindingCodes.PercentOutOfRange, field, sent.Text, Message.Of("colours.percent-out-of-range", ("sent", sent.Text.Trim())),
            [Message.Of("colours.percent-allowed")], Meant(percent)));
        return null;
    }

    private static Message? Meant(decimal percent) => percent switch
    {
        0 => Message.Of("colours.leave-out"),
        < 0 => Message.Of("colours.minus-sign"),
        _ => null,
    };
}
