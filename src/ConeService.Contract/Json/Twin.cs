namespace ConeService.Contract.Json;

/// <summary>What an answer in °C is in °F: a temperature, a difference or a rate, as its name says.</summary>
internal static class Twin
{
    private static readonly string[] Ends = ["elsius", "elsiusDifference", "elsiusPerHour"];

    /// <summary>The name of the member in °F; null for a member that is nothing in °C.</summary>
    public static string? NameOf(string name)
    {
        var at = Math.Max(
            name.LastIndexOf("Celsius", StringComparison.Ordinal), name.StartsWith("celsius", StringComparison.Ordinal) ? 0 : -1);
        if (at < 0 || !Ends.Contains(name[(at + 1)..], StringComparer.Ordinal)) return null;
        return string.Concat(name.AsSpan(0, at), name[at] == 'C' ? "Fahrenheit" : "fahrenheit", name.AsSpan(at + "celsius".Length));
    }

    /// <summary>True for a point of the scale, whose zero lies at 32 °F; a difference and a rate only have other degrees.</summary>
    public static bool IsOnTheScale(string name) => name.EndsWith("elsius", StringComparison.Ordinal);

    /// <summary>True for what can be reckoned.</summary>
    public static bool IsNumber(Type type) =>
        (Nullable.GetUnderlyingType(type) ?? type) is var number
        && (number == typeof(double) || number == typeof(decimal) || number == typeof(NumberRange)
            || number == typeof(IReadOnlyList<decimal>));

    /// <summary>The value in °F; a binary number to the thousandth.</summary>
    public static object? Of(object? celsius, bool isOnTheScale)
    {
        var zero = isOnTheScale ? 32 : 0;
        decimal Decimal(decimal value) => (value * 1.8m) + zero;
        return celsius switch
        {
            null => null,
            double value => Math.Round((value * 1.8) + zero, 3),
            decimal value => Trim(Decimal(value)),
            NumberRange range => new NumberRange(
                range.Min is { } least ? Trim(Decimal(least)) : null, range.Max is { } most ? Trim(Decimal(most)) : null),
            IReadOnlyList<decimal> values => (IReadOnlyList<decimal>)[.. values.Select(v => Trim(Decimal(v)))],
            _ => throw new ArgumentException("Not a number of degrees.", nameof(celsius)),
        };
    }

    // 108.0 is 108.
    private static decimal Trim(decimal value) => value / 1.0000000000000000000000000000m;
}
