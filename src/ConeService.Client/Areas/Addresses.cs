using ConeService.Contract.Quantities;

namespace ConeService.Client;

/// <summary>Makes addresses of the service.</summary>
internal static class Addresses
{
    /// <summary>A path with the parameters that were given.</summary>
    public static string Of(string path, params ReadOnlySpan<(string Name, string? Value)> parameters)
    {
        var separator = '?';
        foreach (var (name, value) in parameters)
        {
            if (value is null) continue;
            path += $"{separator}{name}={Uri.EscapeDataString(value)}";
            separator = '&';
        }

        return path;
    }

    /// <summary>A part of a path.</summary>
    public static string Part(string text) => Uri.EscapeDataString(text);

    /// <summary>A temperature as it was given: a rounded °F value is recognised by the service only as one of °F.</summary>
    public static string Text(Temperature temperature) => temperature.GivenFahrenheit is { } fahrenheit
        ? FormattableString.Invariant($"{fahrenheit:0.####}F")
        : FormattableString.Invariant($"{temperature.Celsius:0.####}C");
}
