using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Client;

/// <summary>How the log of a controller was measured and is to be read; what is null is found out or assumed, which the answer
/// says.</summary>
public sealed record LogSettings
{
    /// <summary>C or F, where the header does not say.</summary>
    public string? Units { get; init; }

    /// <summary>Id of a chart.</summary>
    public string? Chart { get; init; }

    /// <summary>The thermocouple behind the temperatures.</summary>
    public ThermocoupleInput? Thermocouple { get; init; }

    /// <summary>oxidation, neutral or reduction; only reduction changes the answer, by a warning.</summary>
    public string? Atmosphere { get; init; }

    /// <summary>Columns, zone and order of dates, where the log leaves a choice.</summary>
    public LogReading Reading { get; init; } = new();

    /// <summary>The same as parameters of an upload.</summary>
    internal (string Name, string? Value)[] Parameters =>
    [
        ("units", Units), ("chart", Chart), ("thermocoupleType", Thermocouple?.Type), ("thermocoupleStandard", Thermocouple?.Standard),
        ("thermocoupleClass", Thermocouple?.Class.Text), ("firings", Text(Thermocouple?.Firings)), ("atmosphere", Atmosphere),
        ("timeColumn", Reading.TimeColumn), ("temperatureColumn", Reading.TemperatureColumn), ("timeZone", Reading.TimeZone),
        ("dateOrder", Reading.DateOrder),
    ];

    /// <summary>Refuses a log that the service would not take in.</summary>
    internal static void Require(ReadOnlyMemory<byte> log)
    {
        if (log.Length <= HeatWorkLimits.MostUploadBytes) return;
        throw new RefusedException(new Finding(
            FindingCodes.RequestTooLarge, "", null, Message.Of("http.body-too-large"),
            [Message.Of("http.up-to-bytes", ("bytes", HeatWorkLimits.MostUploadBytes))]));
    }

    /// <summary>A number as parameters have it.</summary>
    internal static string? Text(double? number) => number?.ToString("0.############", CultureInfo.InvariantCulture);
}
