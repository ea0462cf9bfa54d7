using System.Globalization;
using ConeService.Contract.Answers;

namespace ConeService.Firing.Colour;

/// <summary>Reads a percentage from a query or a body: <c>0.5</c> or <c>0.5 %</c>.</summary>
internal static class PercentInput
{
    /// <summary>Reads a percentage above 0 and up to 100.</summary>
    /// <param name="sent">The value as sent; absent gives null.</param>
    /// <param name="field">The parameter or JSON pointer, for the finding.</param>
    /// <param name="findings">What is wrong is added here.</param>
    public static decimal? Read(SentText sent, string field, ICollection<Finding> findings)
    {
        if (sent.IsAbsent) return null;
        var text = sent.Text!.Trim().TrimEnd('%').TrimEnd();
        if (sent.Kind == SentKind.Other || !decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent))
        {
            findings.Add(new("percent-unreadable", field, sent.Text, "A percentage is a number, with or without a % sign.", ["0.5", "0.5 %"], text.Contains(',') ? "Write decimals with a point." : null));
            return null;
        }

        if (percent is > 0 and <= 100) return percent;
        findings.Add(new(
            "percent-out-of-range", field, sent.Text, $"{sent.Text.Trim()} is no percentage of a glaze.", ["above 0, up to 100"],
            percent == 0 ? "Leave out what is not in the glaze." : percent < 0 ? "A minus sign too many?" : null));
        return null;
    }
}
