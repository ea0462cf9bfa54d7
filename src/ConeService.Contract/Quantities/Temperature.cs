using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Quantities;

/// <summary>A temperature. Kept in °C and, where it was given in °F, with the figure as given: a printed °F is a rounded °C.</summary>
/// <param name="Celsius">The temperature, °C.</param>
/// <param name="GivenFahrenheit">The figure as given, °F; null when it was given in another unit.</param>
public readonly record struct Temperature(decimal Celsius, decimal? GivenFahrenheit = null)
{
    /// <summary>0 °C in kelvin (SI brochure, definition of the Celsius scale).</summary>
    public const decimal ZeroCelsiusInKelvin = 273.15m;

    /// <summary>0 °C in kelvin, for computations in binary floating point.</summary>
    public const double KelvinAtZero = (double)ZeroCelsiusInKelvin;

    /// <summary>The temperature, °F: as given, else converted.</summary>
    public decimal Fahrenheit => GivenFahrenheit ?? ToFahrenheit(Celsius);

    /// <summary>The temperature, K.</summary>
    public double Kelvin => (double)(Celsius + ZeroCelsiusInKelvin);

    /// <summary>A temperature of <paramref name="celsius"/> °C.</summary>
    public static Temperature FromCelsius(decimal celsius) => new(celsius);

    /// <summary>A temperature of <paramref name="fahrenheit"/> °F.</summary>
    public static Temperature FromFahrenheit(decimal fahrenheit) => new((fahrenheit - 32m) * 5m / 9m, fahrenheit);

    /// <summary>A temperature of <paramref name="kelvin"/> K.</summary>
    public static Temperature FromKelvin(decimal kelvin) => new(kelvin - ZeroCelsiusInKelvin);

    /// <summary>°C to °F, exact.</summary>
    public static decimal ToFahrenheit(decimal celsius) => (celsius * 9m / 5m) + 32m;

    /// <summary>
    /// Reads <c>1222C</c>, <c>2232 °F</c>, <c>1495K</c>. A missing unit is an error, never guessed.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="temperature">The temperature.</param>
    /// <param name="finding">What is wrong, with an empty field name; null on success.</param>
    /// <returns>True when the text is a temperature with a unit.</returns>
    public static bool TryParse(string? text, out Temperature temperature, out Finding? finding)
    {
        temperature = default;
        finding = AmbiguousNumber.Finding("", text);
        if (finding is not null) return false;
        if (!QuantityText.TrySplit(text, out var number, out var unit))
        {
            finding = new(
                FindingCodes.TemperatureUnreadable, "", text, Message.Of("quantities.temperature-unreadable", ("text", text)), Examples,
                QuantityText.LikelyMistake(text));
            return false;
        }

        switch (unit)
        {
            case "c":
                temperature = FromCelsius(number);
                return true;
            case "f":
                temperature = FromFahrenheit(number);
                return true;
            case "k":
                temperature = FromKelvin(number);
                return true;
            case "":
                finding = new(
                    FindingCodes.TemperatureUnitMissing, "", text,
                    Message.Of("quantities.temperature-unit-missing", ("text", text)), Examples,
                    GuessUnit(number));
                return false;
            default:
                finding = new(
                    FindingCodes.TemperatureUnreadable, "", text,
                    Message.Of("quantities.temperature-unit-unknown", ("text", text)), Examples,
                    unit.Contains('/', StringComparison.Ordinal) ? Message.Of("quantities.rate-for-temperature") : OtherDigits.Meant(text));
                return false;
        }
    }

    private static IReadOnlyList<Message> Examples { get; } = Message.Verbatim(["1222C", "2232F", "1495K"]);

    private static Message? GuessUnit(decimal number)
    {
        var celsius = Math.Round((number - 32m) * 5m / 9m);
        return number switch
        {
            > 1500m and < 3000m => Message.Of("quantities.probably-fahrenheit", ("number", number), ("celsius", celsius)),
            > 0m => Message.Of(
                "quantities.celsius-or-fahrenheit", ("number", number),
                ("fahrenheit", Math.Round(ToFahrenheit(number))), ("celsius", celsius)),
            _ => null,
        };
    }
}
