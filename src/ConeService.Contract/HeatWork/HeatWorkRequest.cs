using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Requests;
using ConeService.Data;

namespace ConeService.Contract.HeatWork;

/// <summary>A firing as a programme or as a log, and how it was measured.</summary>
[Needs(nameof(Units))]
public record HeatWorkRequest
{
    /// <summary>C or F: the unit of every temperature, and with “per hour” of every rate.</summary>
    [AllowedValues("C", "F")]
    public string? Units { get; init; }

    /// <summary>Temperature at the start of a programme; left out: 20 °C, said in assumed.</summary>
    [Range(HeatWorkLimits.Coldest, HeatWorkLimits.Hottest)]
    public double? Start { get; init; }

    /// <summary>The segments of a programme, in order, up to 10,000.</summary>
    [Items(1, HeatWorkCheck.MostSegments)]
    public IReadOnlyList<ProgrammeSegment?>? Segments { get; init; }

    /// <summary>Rate of the cooling after the last segment, in units per hour; null or absent: the history ends with the last
    /// segment.</summary>
    [Range(-HeatWorkLimits.Fastest, HeatWorkLimits.Fastest)]
    public double? CoolingRate { get; init; }

    /// <summary>Cooling towards the room after the last segment, instead of at a steady rate.</summary>
    public NaturalCooling? NaturalCooling { get; init; }

    /// <summary>What a segment without a rate does at most, in units per hour; left out: 150 °C/h, said in assumed.</summary>
    [Range(-HeatWorkLimits.Fastest, HeatWorkLimits.Fastest)]
    public double? FullSpeedRate { get; init; }

    /// <summary>The samples of a log, instead of a programme.</summary>
    [Items(2)]
    public IReadOnlyList<LogSample?>? Log { get; init; }

    /// <summary>The chart whose cones are followed; left out: witness-self-supporting, said in assumed.</summary>
    public string? Chart { get; init; }

    /// <summary>The thermocouple behind the temperatures; left out: type K, IEC 60584 class 2, new, said in assumed.</summary>
    public ThermocoupleInput? Thermocouple { get; init; }

    /// <summary>Parts of the uncertainty that you know better than the defaults.</summary>
    public UncertaintyInput? Uncertainty { get; init; }

    /// <summary>oxidation, neutral or reduction; only reduction changes the answer, by a warning.</summary>
    [AtmosphereWords(AtmosphereUse.Firing)]
    public string? Atmosphere { get; init; }
}

/// <summary>One segment of a programme.</summary>
/// <param name="Rate">How fast, in units per hour, up or down to the target, up to 3000 °C/h (5400 °F/h) and never 0; null or absent:
/// as fast as possible.</param>
/// <param name="Target">Where to, in units: -30 to 1500 °C, -22 to 2732 °F. Left out only where it is asked for.</param>
/// <param name="HoldMinutes">How long to stay there, minutes; left out: 0.</param>
public sealed record ProgrammeSegment(
    [property: Range(-HeatWorkLimits.Fastest, HeatWorkLimits.Fastest)] double? Rate = null,
    [property: Range(HeatWorkLimits.Coldest, HeatWorkLimits.Hottest)] double? Target = null,
    [property: Range(0.0, HeatWorkLimits.LongestMinutes), DefaultValue(0.0)] double? HoldMinutes = null);

/// <summary>One sample of a log.</summary>
/// <param name="Minutes">Time, minutes since any moment.</param>
/// <param name="Temperature">Temperature, in units.</param>
[Needs(nameof(Minutes), nameof(Temperature))]
public sealed record LogSample(
    double? Minutes = null, [property: Range(HeatWorkLimits.Coldest, HeatWorkLimits.Hottest)] double? Temperature = null);

/// <summary>Cooling towards the temperature of the room, T = room + (top − room)·exp(−t/τ). Give one of the two rates.</summary>
/// <param name="TimeConstantMinutes">τ, minutes: the kiln loses 63 % of its excess in this time.</param>
/// <param name="FirstRate">The cooling rate at the top instead of τ, in units per hour.</param>
/// <param name="Room">Temperature of the room, in units; left out: 20 °C, said in assumed.</param>
public sealed record NaturalCooling(
    [property: Range(6.0, 30_000.0)] double? TimeConstantMinutes = null,
    [property: Range(-HeatWorkLimits.Fastest, HeatWorkLimits.Fastest)] double? FirstRate = null,
    [property: Range(HeatWorkLimits.Coldest, HeatWorkLimits.Hottest)] double? Room = null);

/// <summary>A thermocouple.</summary>
/// <param name="Type">K, N, R, S or B.</param>
/// <param name="Standard">iec-60584 or astm-e230.</param>
/// <param name="Class">1 or 2 of iec-60584; standard or special of astm-e230.</param>
/// <param name="Firings">How many firings above 1100 °C it has seen.</param>
public sealed record ThermocoupleInput(
    [property: AllowedValues("K", "N", "R", "S", "B")] string? Type = null,
    [property: AllowedValues("iec-60584", "astm-e230")] string? Standard = null,
    [property: AllowedValues("1", "2", "standard", "special")] SentText Class = default,
    [property: Range(0.0, 10_000.0)] double? Firings = null);

/// <summary>Parts of the uncertainty as standard deviations, °C;
/// each left out: the default of the data package, said in assumed.</summary>
/// <param name="ConeCelsiusDifference">Spread between cones of one number.</param>
/// <param name="GradientCelsiusDifference">Difference between the places of thermocouple and cone.</param>
/// <param name="DriftCelsiusDifference">Drift of the thermocouple, instead of an estimate from its firings.</param>
public sealed record UncertaintyInput(
    [property: Range(0.0, 200.0)] double? ConeCelsiusDifference = null,
    [property: Range(0.0, 200.0)] double? GradientCelsiusDifference = null,
    [property: Range(0.0, 200.0)] double? DriftCelsiusDifference = null);
