using System.Globalization;
using ConeService.Contract.Cones;

namespace ConeService.Contract.Answers;

/// <summary>
/// A member of a request body as it was sent. Kept raw so that one bad member spoils its own line only, and so that
/// a number sent where text is needed can be explained instead of merely refused.
/// </summary>
/// <param name="Text">The text, or the JSON of anything that is not text; null when absent.</param>
/// <param name="Kind">What was sent.</param>
public readonly record struct SentText(string? Text, SentKind Kind)
{
    /// <summary>True when nothing, null or blank text was sent.</summary>
    public bool IsAbsent => Kind == SentKind.Absent || (Kind == SentKind.Text && string.IsNullOrWhiteSpace(Text));

    /// <summary>Text as sent.</summary>
    public static SentText Of(string? text) => text is null ? default : new(text, SentKind.Text);

    /// <summary>Text, as a program writes it.</summary>
    public static implicit operator SentText(string? text) => Of(text);

    /// <summary>A cone, which is text wherever it stands.</summary>
    public static implicit operator SentText(Cone cone) => Of(cone.ToString());

    /// <summary>A number, as a program writes it; what is not finite is no JSON number and is refused where it is read.</summary>
    public static implicit operator SentText(double number) => new(number.ToString(CultureInfo.InvariantCulture), SentKind.Number);

    /// <summary>A whole number, as a program writes it.</summary>
    public static implicit operator SentText(int number) => new(number.ToString(CultureInfo.InvariantCulture), SentKind.Number);
}

/// <summary>What sort of value was sent.</summary>
public enum SentKind
{
    /// <summary>Nothing, or null.</summary>
    Absent,

    /// <summary>Text.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>true, false, an object or an array.</summary>
    Other,
}
