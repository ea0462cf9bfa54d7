using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Cones;

/// <summary>Reads a cone from a request body, where a JSON number must be refused with the reason.</summary>
internal static class ConeInput
{
    /// <summary>Reads a cone of the scale.</summary>
    /// <param name="scale">The scale.</param>
    /// <param name="sent">The member as sent; must not be absent.</param>
    /// <param name="field">JSON pointer or column, for the finding.</param>
    /// <param name="cone">The cone.</param>
    /// <param name="finding">What is wrong; null on success.</param>
    public static bool TryRead(ConeScale scale, SentText sent, string field, out Cone cone, out Finding? finding)
    {
        if (sent.Kind is SentKind.Text) return scale.TryRead(sent.Text, field, out cone, out finding);
        cone = default;
        finding = sent.Kind is SentKind.Number
            ? new(
                FindingCodes.ConeAsNumber, field, sent.Text, Message.Of("cones.as-number"),
                Message.Verbatim([$"\"{sent.Text}\"", $"\"0{sent.Text}\""]), Message.Of("cones.as-number-which", ("cone", sent.Text)))
            : new(
                FindingCodes.ConeUnreadable, field, sent.Text,
                Message.Of("cones.not-text"), Message.Verbatim(["\"06\"", "\"6\"", "\"05.5\""]));
        return false;
    }
}
