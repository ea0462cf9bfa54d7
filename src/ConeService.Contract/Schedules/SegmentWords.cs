using System.Globalization;
using ConeService.Contract.Quantities;

namespace ConeService.Contract.Schedules;

/// <summary>Segments as one says them: “at 60 °C/h to 600 °C, hold 1 h 30 min”.</summary>
public static class SegmentWords
{
    /// <summary>The sentence.</summary>
    /// <param name="fahrenheit">True for °F.</param>
    /// <param name="rate">Rate, °C/h; null: as fast as the kiln goes.</param>
    /// <param name="celsius">Where to, °C.</param>
    /// <param name="cone">The cone of the target, where it is one.</param>
    /// <param name="below">How far below that cone's peak, °C.</param>
    /// <param name="holdMinutes">Hold, minutes.</param>
    /// <param name="moves">False when the segment only holds.</param>
    public static string Say(bool fahrenheit, double? rate, double celsius, string? cone, double? below, double holdMinutes, bool moves = true)
    {
        var go = !moves ? "stay at" : rate is { } r ? $"at {Rate(r, fahrenheit)} to" : "as fast as the kiln goes to";
        var where = (cone, below) switch
        {
            (null, _) => Temperature(celsius, fahrenheit),
            (_, { } b) => $"{Whole(fahrenheit ? b * 1.8 : b)} {Unit(fahrenheit)} below the peak of cone {cone}",
            _ => $"cone {cone}, about {Temperature(celsius, fahrenheit)}",
        };
        return holdMinutes > 0 ? $"{go} {where}, hold {Duration(holdMinutes)}" : $"{go} {where}";
    }

    /// <summary><c>1 h 30 min</c>.</summary>
    public static string Duration(double minutes)
    {
        var whole = (int)Math.Round(minutes, MidpointRounding.AwayFromZero);
        return (whole / 60, whole % 60) switch
        {
            (0, var m) => $"{m} min",
            (var h, 0) => $"{h} h",
            var (h, m) => $"{h} h {m} min",
        };
    }

    /// <summary><c>600 °C</c> or <c>1112 °F</c>, to whole degrees.</summary>
    public static string Temperature(double celsius, bool fahrenheit) => $"{Whole(fahrenheit ? (celsius * 1.8) + 32 : celsius)} {Unit(fahrenheit)}";

    /// <summary><c>60 °C/h</c> or <c>108 °F/h</c>, to whole degrees.</summary>
    public static string Rate(double celsiusPerHour, bool fahrenheit) => $"{Whole(fahrenheit ? celsiusPerHour * 1.8 : celsiusPerHour)} {Unit(fahrenheit)}/h";

    private static string Unit(bool fahrenheit) => fahrenheit ? "°F" : "°C";

    private static string Whole(double value) => Math.Round(value, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture);
}
