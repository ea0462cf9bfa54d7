using System.Globalization;

namespace ConeService.Contract.Quantities;

/// <summary>Temperatures, rates and times as numbers with their units, to whole degrees and minutes; the same in every language.</summary>
public static class QuantityFormat
{
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

    /// <summary><c>600 °C</c> or <c>1112 °F</c>.</summary>
    public static string Temperature(double celsius, bool fahrenheit) =>
        $"{Whole(fahrenheit ? (celsius * 1.8) + 32 : celsius)} {Unit(fahrenheit)}";

    /// <summary><c>60 °C</c> or <c>108 °F</c>, a difference.</summary>
    public static string Difference(double celsius, bool fahrenheit) => $"{Whole(fahrenheit ? celsius * 1.8 : celsius)} {Unit(fahrenheit)}";

    /// <summary><c>60 °C/h</c> or <c>108 °F/h</c>.</summary>
    public static string Rate(double celsiusPerHour, bool fahrenheit) => Difference(celsiusPerHour, fahrenheit) + "/h";

    private static string Unit(bool fahrenheit) => fahrenheit ? "°F" : "°C";

    private static string Whole(double value) =>
        Math.Round(value, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture);
}
