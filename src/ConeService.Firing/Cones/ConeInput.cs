using ConeService.Contract.Answers;
using ConeService.Contract.Cones;

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
            ? new("cone-as-number", field, sent.Text,
                "A cone is text: \"06\" and \"6\" are two cones more than 200 °C apart, and as numbers they are the same.",
                [$"\"{sent.Text}\"", $"\"0{sent.Text}\""],
                $"Cone {sent.Text} or cone 0{sent.Text}? Put the one meant in quotation marks.")
            : new("cone-unreadable", field, sent.Text, "A cone is text.", ["\"06\"", "\"6\"", "\"05.5\""]);
        return false;
    }
}
