using ConeService.Contract.Answers;
using ConeService.Contract.Problems;

namespace ConeService.Contract.Quantities;

/// <summary>Reads quantities of a request body: text with its own unit, or a number in the request's units.</summary>
public static class QuantityInput
{
    /// <summary>The quantity as text with its unit, ready to be parsed; null when absent or refused.</summary>
    /// <param name="sent">The member as sent.</param>
    /// <param name="units">The request's units, C or F; null when it names none.</param>
    /// <param name="suffix">What follows the unit: empty for a temperature, <c>/h</c> for a rate.</param>
    /// <param name="name">What is read, for messages: temperature or rate.</param>
    /// <param name="field">JSON pointer or column, for findings.</param>
    /// <param name="findings">Anything wrong is added here.</param>
    public static string? WithUnit(SentText sent, string? units, string suffix, string name, string field, ICollection<Finding> findings)
    {
        if (sent.IsAbsent) return null;
        if (sent.Kind == SentKind.Text) return sent.Text;
        if (sent.Kind == SentKind.Number && units is "C" or "F") return sent.Text + units + suffix;
        findings.Add(sent.Kind == SentKind.Number
            ? new(name == "rate" ? FindingCodes.RateUnitMissing : FindingCodes.TemperatureUnitMissing, field, sent.Text, $"The {name} {sent.Text} has no unit.",
                [$"\"{sent.Text}C{suffix}\"", $"\"{sent.Text}F{suffix}\"", "\"units\": \"C\" or \"F\" beside the lines"])
            : new(name == "rate" ? FindingCodes.RateUnreadable : FindingCodes.TemperatureUnreadable, field, sent.Text, $"A {name} is text with its unit, or a number in the request's units.", [$"\"60C{suffix}\""]));
        return null;
    }
}
