using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Quantities;

/// <summary>A heating rate, kept in °C/h. Rates convert by 5/9 only: the 32 of the °F scale has no place in a difference.</summary>
/// <param name="CelsiusPerHour">The rate, °C/h.</param>
public readonly record struct HeatingRate(decimal CelsiusPerHour)
{
    /// <summary>Slowest rate that end points are computed for, °C/h (HEAT-WORK limits: nothing was measured below 15).</summary>
    public const decimal Slowest = 5m;

    /// <summary>Fastest rate that end points are computed for, °C/h.</summary>
    public const decimal Fastest = 600m;

    /// <summary>The rate, °F/h.</summary>
    public decimal FahrenheitPerHour => CelsiusPerHour * 9m / 5m;

    /// <summary>A rate in °C/h.</summary>
    public static HeatingRate FromCelsiusPerHour(decimal celsiusPerHour) => new(celsiusPerHour);

    /// <summary>A rate in °F/h.</summary>
    public static HeatingRate FromFahrenheitPerHour(decimal fahrenheitPerHour) => new(fahrenheitPerHour * 5m / 9m);

    /// <summary>
    /// Reads <c>60C/h</c>, <c>108 °F/h</c>, <c>1C/min</c>, <c>60K/h</c> and checks the range 5 to 600 °C/h.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="rate">The rate.</param>
    /// <param name="finding">What is wrong, with an empty field name; null on success.</param>
    /// <returns>True when the text is a rate with a unit inside the range.</returns>
    public static bool TryParse(string? text, out HeatingRate rate, out Finding? finding)
    {
        rate = default;
        finding = AmbiguousNumber.Finding("", text);
        if (finding is not null) return false;
        if (!QuantityText.TrySplit(text, out var number, out var unit))
        {
            finding = new(
                FindingCodes.RateUnreadable, "", text,
                Message.Of("quantities.rate-unreadable", ("text", text)), Examples, QuantityText.LikelyMistake(text));
            return false;
        }

        decimal? celsiusPerHour = Math.Abs(number) > 1_000_000m ? 1_000_000m * Math.Sign(number) : unit switch
        {
            "c/h" or "k/h" => number,
            "f/h" => number * 5m / 9m,
            "c/min" or "k/min" => number * 60m,
            "f/min" => number * 60m * 5m / 9m,
            _ => null,
        };
        if (celsiusPerHour is not { } value)
        {
            finding = MissingOrWrongUnit(text, number, unit);
            return false;
        }

        finding = CheckRange(value, text);
        rate = new(value);
        return finding is null;
    }

    /// <summary>Null when the rate lies within 5 to 600 °C/h; otherwise what is wrong.</summary>
    public static Finding? CheckRange(decimal celsiusPerHour, string? text)
    {
        if (celsiusPerHour is >= Slowest and <= Fastest) return null;
        var mistake = celsiusPerHour switch
        {
            0m => Message.Of("quantities.hold-has-no-rate"),
            < 0m => Message.Of("quantities.cooling-has-no-end-point"),
            < Slowest => Message.Of("quantities.rate-too-slow"),
            _ => Message.Of("quantities.rate-too-fast"),
        };
        return new(
            FindingCodes.RateOutOfRange, "", text, Message.Of("quantities.rate-out-of-range", ("text", text)),
            [
                Message.Of("answers.range", ("low", "5C/h"), ("high", "600C/h")),
                Message.Of("answers.range", ("low", "9F/h"), ("high", "1080F/h")),
            ],
            mistake);
    }

    /// <summary>The rate with its unit, °C/h, as the API reads it.</summary>
    public override string ToString() => CelsiusPerHour.ToString("0.####", CultureInfo.InvariantCulture) + "C/h";

    private static IReadOnlyList<Message> Examples { get; } = Message.Verbatim(["60C/h", "108F/h", "1C/min"]);

    private static Finding MissingOrWrongUnit(string? text, decimal number, string unit) => unit switch
    {
        "" or "/h" => new(
            FindingCodes.RateUnitMissing, "", text, Message.Of("quantities.rate-unit-missing", ("text", text)), Examples,
            Message.Of("quantities.rate-unit-choice", ("number", number))),
        "c" or "f" or "k" => new(
            FindingCodes.RateUnitMissing, "", text, Message.Of("quantities.rate-time-missing", ("text", text)), Examples,
            Message.Of("quantities.rate-per-hour", ("number", number), ("unit", unit.ToUpperInvariant()))),
        _ => new(FindingCodes.RateUnreadable, "", text, Message.Of("quantities.rate-unit-unknown", ("text", text)), Examples),
    };
}
