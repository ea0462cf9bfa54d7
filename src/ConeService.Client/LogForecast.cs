using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;

namespace ConeService.Client;

/// <summary>What is asked about a firing under way whose log its controller wrote.</summary>
/// <param name="Cone">The cone that is to be put down.</param>
public sealed record LogForecast(Cone Cone)
{
    /// <summary>What is left of the programme, in the units of the log, each segment with its target; null: nothing, the kiln is
    /// off.</summary>
    public IReadOnlyList<ProgrammeSegment>? Segments { get; init; }

    /// <summary>Rate of the cooling after the last segment, in units per hour; null: none is told.</summary>
    public double? CoolingRate { get; init; }

    /// <summary>When the log begins: date, time and offset, such as 2026-12-04T18:00:00+01:00; null: not said.</summary>
    public string? Start { get; init; }

    /// <summary>The same as parameters of an upload.</summary>
    internal (string Name, string? Value)[] Parameters =>
    [
        ("cone", Cone.ToString()),
        ("segments", Segments is null ? null : string.Join(';', Segments.Select(s =>
            $"{LogSettings.Text(s.Rate)},{LogSettings.Text(s.Target)},{LogSettings.Text(s.HoldMinutes)}"))),
        ("coolingRate", LogSettings.Text(CoolingRate)), ("start", Start),
    ];

    /// <summary>The same as a question without its log.</summary>
    internal ForecastRequest Request(LogSettings settings) => new()
    {
        Units = settings.Units,
        Cone = SentText.Of(Cone.ToString()),
        Segments = Segments is null ? null : [.. Segments.Select(s => s with { HoldMinutes = s.HoldMinutes ?? 0 })],
        CoolingRate = CoolingRate,
        Start = Start,
        Chart = settings.Chart,
        Atmosphere = settings.Atmosphere,
        Thermocouple = settings.Thermocouple,
    };
}
