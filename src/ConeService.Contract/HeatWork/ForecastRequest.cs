using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Kilns;
using ConeService.Contract.Requests;
using ConeService.Contract.Schedules;
using ConeService.Data;

namespace ConeService.Contract.HeatWork;

/// <summary>A firing that is under way, or was broken off: its log so far, what is left of its programme, and the cone it is for.</summary>
[Needs(nameof(Units), nameof(Log), nameof(Cone))]
public sealed record ForecastRequest
{
    /// <summary>C or F: the unit of every temperature, and with “per hour” of every rate.</summary>
    [AllowedValues("C", "F")]
    public string? Units { get; init; }

    /// <summary>The samples so far; the last one is now.</summary>
    [Items(2)]
    public IReadOnlyList<LogSample?>? Log { get; init; }

    /// <summary>The cone that is to be put down, as text.</summary>
    [RegularExpression(ConeSpelling.Pattern)]
    public SentText Cone { get; init; }

    /// <summary>What is left of the programme, from where the log ends: first the segment under way, with what is left of its hold. Left
    /// out: nothing is left, the kiln is off.</summary>
    [Items(1, HeatWorkCheck.MostSegments)]
    public IReadOnlyList<ProgrammeSegment?>? Segments { get; init; }

    /// <summary>Rate of the cooling after the last segment, in units per hour; not with a kiln, which decides it.</summary>
    [Range(-HeatWorkLimits.Fastest, HeatWorkLimits.Fastest)]
    public double? CoolingRate { get; init; }

    /// <summary>Cooling towards the room after the last segment, instead of at a steady rate; not with a kiln, which decides it.</summary>
    public NaturalCooling? NaturalCooling { get; init; }

    /// <summary>What a segment without a rate does at most, in units per hour; not with a kiln, which decides it. Left out: 150 °C/h, said
    /// in assumed.</summary>
    [Range(-HeatWorkLimits.Fastest, HeatWorkLimits.Fastest)]
    public double? FullSpeedRate { get; init; }

    /// <summary>The kiln; its losses and power are fitted to the log. Left out: the kiln is taken to follow the programme.</summary>
    public Kiln? Kiln { get; init; }

    /// <summary>What stands in the kiln.</summary>
    public FitLoad? Load { get; init; }

    /// <summary>When the log begins: date, time and offset, such as 2026-12-04T18:00:00+01:00; needed for a calendar.</summary>
    [RegularExpression(FitRequest.StartPattern)]
    public string? Start { get; init; }

    /// <summary>The chart whose cone is meant; left out: witness-self-supporting, said in assumed.</summary>
    public string? Chart { get; init; }

    /// <summary>The thermocouple behind the temperatures; left out: that of the kiln, else type K, IEC 60584 class 2, new, said in
    /// assumed.</summary>
    public ThermocoupleInput? Thermocouple { get; init; }

    /// <summary>Parts of the uncertainty that you know better than the defaults.</summary>
    public UncertaintyInput? Uncertainty { get; init; }

    /// <summary>oxidation, neutral or reduction; only reduction changes the answer, by a warning.</summary>
    [AtmosphereWords(AtmosphereUse.Firing)]
    public string? Atmosphere { get; init; }
}
