using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Schedules;

/// <summary>Segments as one says them: “at 60 °C/h to 600 °C, hold 1 h 30 min”.</summary>
public static class SegmentSentence
{
    /// <summary>A segment that goes to a temperature.</summary>
    /// <param name="fahrenheit">True for °F.</param>
    /// <param name="rate">Rate, °C/h; null: as fast as the kiln goes.</param>
    /// <param name="celsius">Where to, °C.</param>
    /// <param name="holdMinutes">Hold, minutes.</param>
    /// <param name="moves">False when the segment only holds.</param>
    public static Message To(bool fahrenheit, double? rate, double celsius, double holdMinutes, bool moves = true) => Message.Of(
        "schedules.segment-to-temperature",
        ("go", Go(rate, moves)),
        ("rate", Rate(rate, fahrenheit)),
        ("target", QuantityFormat.Temperature(celsius, fahrenheit)),
        ("hold", Hold(holdMinutes)));

    /// <summary>A segment that goes to a cone.</summary>
    /// <param name="fahrenheit">True for °F.</param>
    /// <param name="rate">Rate, °C/h; null: as fast as the kiln goes.</param>
    /// <param name="cone">The cone.</param>
    /// <param name="celsius">Its end point, °C.</param>
    /// <param name="holdMinutes">Hold, minutes.</param>
    public static Message ToCone(bool fahrenheit, double? rate, string cone, double celsius, double holdMinutes) => Message.Of(
        "schedules.segment-to-cone",
        ("go", Go(rate, moves: true)),
        ("rate", Rate(rate, fahrenheit)),
        ("cone", cone),
        ("target", QuantityFormat.Temperature(celsius, fahrenheit)),
        ("hold", Hold(holdMinutes)));

    /// <summary>A segment that goes to a temperature below the peak of a cone.</summary>
    /// <param name="fahrenheit">True for °F.</param>
    /// <param name="rate">Rate, °C/h; null: as fast as the kiln goes.</param>
    /// <param name="cone">The cone.</param>
    /// <param name="below">How far below its peak, °C.</param>
    /// <param name="holdMinutes">Hold, minutes.</param>
    public static Message BelowCone(bool fahrenheit, double? rate, string cone, double below, double holdMinutes) => Message.Of(
        "schedules.segment-below-cone",
        ("go", Go(rate, moves: true)),
        ("rate", Rate(rate, fahrenheit)),
        ("cone", cone),
        ("below", QuantityFormat.Difference(below, fahrenheit)),
        ("hold", Hold(holdMinutes)));

    private static string Go(double? rate, bool moves) => !moves ? "stay" : rate is null ? "full" : "ramp";

    private static string? Rate(double? rate, bool fahrenheit) => rate is { } r ? QuantityFormat.Rate(r, fahrenheit) : null;

    private static string Hold(double minutes) => minutes > 0 ? QuantityFormat.Duration(minutes) : "none";
}
