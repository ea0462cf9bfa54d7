using ConeService.Contract.Answers;
using ConeService.Contract.Equations;
using ConeService.Contract.Json;
using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.HeatWork;

/// <summary>What a firing under way will do, and what would still change it.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Chart">The chart.</param>
/// <param name="Cone">The cone that is to be put down.</param>
/// <param name="Lines">The answer in three sentences: the end, the cone with what to change, the opening.</param>
/// <param name="Now">Where the firing stands at the last sample.</param>
/// <param name="End">When the programme ends; where the kiln can't finish it, when it gives up.</param>
/// <param name="Opening">When chamber and ware fall below 95 °C (203 °F); null when that is not foreseen.</param>
/// <param name="Target">What will have happened to the cone.</param>
/// <param name="Interruption">The fall that the log ends in, before the work was done; null without one.</param>
/// <param name="Advice">What would still change the outcome.</param>
/// <param name="Kiln">What the kiln makes of the rest; null without a kiln that can be modelled.</param>
/// <param name="HeatWork">The whole firing, log and forecast, against every cone of the chart.</param>
/// <param name="Cautions">Hazards of going on, restarting and opening, and what controls them.</param>
/// <param name="Basis">The weaker basis of the cones about the result.</param>
/// <param name="Confidence">The weakest of what the forecast rests on.</param>
/// <param name="Warnings">What was found in the log, and what must be known about the forecast.</param>
/// <param name="Notes">What holds for every such answer.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Assumed">Parameters that were left out, with what was taken.</param>
/// <param name="TargetProgressMin">Least progress of the cone that is to be reckoned with, as the kiln lags and cools: 1 is just down.
/// Without a kiln its cooling is a guess, and the span is wide.</param>
/// <param name="TargetProgressMax">The most.</param>
public sealed record ForecastAnswer(
    string DatasetVersion,
    string Chart,
    string Cone,
    IReadOnlyList<Message> Lines,
    ForecastNow Now,
    ForecastMoment End,
    ForecastMoment? Opening,
    ConeResult Target,
    ForecastInterruption? Interruption,
    ForecastAdvice Advice,
    ForecastKiln? Kiln,
    HeatWorkAnswer HeatWork,
    IReadOnlyList<FitCaution> Cautions,
    Basis Basis,
    Confidence Confidence,
    IReadOnlyList<HeatWarning> Warnings,
    IReadOnlyList<Message> Notes,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed,
    [property: RangeOf("targetProgressSpan")] double TargetProgressMin,
    double TargetProgressMax) : IComputed
{
    Address IComputed.Explain => EquationIds.Address(EquationIds.FiringForecast);
}

/// <summary>Where the firing stands at the last sample.</summary>
/// <param name="Minutes">Since the first sample, minutes.</param>
/// <param name="At">The same as a moment; null without a start.</param>
/// <param name="Celsius">The meter, °C.</param>
/// <param name="RateCelsiusPerHour">Mean rate over the last half hour of the log, °C/h; negative when cooling.</param>
/// <param name="TargetProgress">Progress of the cone so far: 1 is just down.</param>
public sealed record ForecastNow(double Minutes, DateTimeOffset? At, double Celsius, double RateCelsiusPerHour, double TargetProgress);

/// <summary>A moment that is foreseen.</summary>
/// <param name="Minutes">Since the first sample, minutes.</param>
/// <param name="At">The same as a moment; null without a start.</param>
/// <param name="RemainingMinutes">From the last sample, minutes.</param>
/// <param name="SpanMinutesMin">The earliest that is to be reckoned with, minutes from the last sample.</param>
/// <param name="SpanMinutesMax">The latest, minutes from the last sample.</param>
/// <param name="Earliest">The earliest as a moment.</param>
/// <param name="Latest">The latest as a moment.</param>
public sealed record ForecastMoment(
    double Minutes,
    DateTimeOffset? At,
    double RemainingMinutes,
    [property: RangeOf("spanMinutes")] double SpanMinutesMin,
    double SpanMinutesMax,
    DateTimeOffset? Earliest,
    DateTimeOffset? Latest);

/// <summary>A fall at the end of the log that the rest of the programme does not ask for: a power cut, or a firing broken off.</summary>
/// <param name="AtMinutes">When the fall began, minutes since the first sample.</param>
/// <param name="SinceMinutes">From there to the last sample, minutes.</param>
/// <param name="FromCelsius">Where it began, °C.</param>
/// <param name="LowestCelsius">The lowest since, °C.</param>
public sealed record ForecastInterruption(double AtMinutes, double SinceMinutes, double FromCelsius, double LowestCelsius);

/// <summary>What would still change the outcome.</summary>
/// <param name="Verdict">In one word.</param>
/// <param name="Message">In words, with the first of the options.</param>
/// <param name="Options">Programmes from here that put the cone just down, the plainest first; empty where there is none, or none is
/// needed.</param>
public sealed record ForecastAdvice(ForecastVerdict Verdict, Message Message, IReadOnlyList<ForecastOption> Options);

/// <summary>A programme from the last sample on that puts the cone just down.</summary>
/// <param name="Change">hold or peak: what differs from the programme sent, or from a usual one where none is left.</param>
/// <param name="Segment">The segment that is changed, from 1.</param>
/// <param name="PeakCelsius">Its target, °C.</param>
/// <param name="HoldMinutes">Its hold, minutes.</param>
/// <param name="RateCelsiusPerHour">How fast it climbs, °C/h; null for as fast as possible.</param>
/// <param name="Message">In words.</param>
/// <param name="TargetProgress">Progress of the cone at the end, with these whole degrees and minutes: 1 is just down.</param>
/// <param name="EndMinutes">When the programme then ends, minutes from the last sample.</param>
/// <param name="Programme">The programme in the units of the request: its segments can be sent here again, and all of it to
/// /v1/heat-work.</param>
public sealed record ForecastOption(
    ForecastChange Change,
    int Segment,
    double PeakCelsius,
    double HoldMinutes,
    double? RateCelsiusPerHour,
    Message Message,
    double TargetProgress,
    double EndMinutes,
    ForecastProgramme Programme);

/// <summary>A programme from the last sample on.</summary>
/// <param name="Units">C or F.</param>
/// <param name="Start">Where the log ends, in units.</param>
/// <param name="Segments">The segments.</param>
public sealed record ForecastProgramme(string Units, double Start, IReadOnlyList<ForecastRamp> Segments);

/// <summary>One segment of it.</summary>
/// <param name="Rate">How fast, in units per hour, up or down; null: as fast as possible.</param>
/// <param name="Target">Where to, in units.</param>
/// <param name="HoldMinutes">How long to stay there, minutes.</param>
public sealed record ForecastRamp(double? Rate, double Target, double HoldMinutes);

/// <summary>What the kiln, with losses and power fitted to the log, makes of the rest of the programme.</summary>
/// <param name="Id">Your name for it.</param>
/// <param name="Heat">What heats it.</param>
/// <param name="CanFollow">True when it stays within 10 °C of every ramp that is left.</param>
/// <param name="Finishes">True when it runs every segment to its end; false when it stalls.</param>
/// <param name="Segments">What it does in each segment that is left, minutes from the first sample.</param>
/// <param name="Calibration">What the log changed in the model.</param>
public sealed record ForecastKiln(
    string? Id, KilnHeat Heat, bool CanFollow, bool Finishes, IReadOnlyList<SegmentOutcome> Segments, KilnCalibration Calibration);

/// <summary>What the log so far changed in the model of the kiln.</summary>
/// <param name="LeakFactorBefore">Leak as stated or assumed.</param>
/// <param name="LeakFactor">Leak that explains the fall in the log; the same where the log shows none with the power off.</param>
/// <param name="PowerFactor">Power that the log shows, over what was stated or assumed; 1 where the log shows nothing of it.</param>
/// <param name="Message">In words.</param>
public sealed record KilnCalibration(double LeakFactorBefore, double LeakFactor, double PowerFactor, Message Message);

/// <summary>What to do with a firing under way.</summary>
public enum ForecastVerdict
{
    /// <summary>As programmed the cone ends down, and not far past: change nothing.</summary>
    AsProgrammed,

    /// <summary>As programmed the cone stays up.</summary>
    MoreHeat,

    /// <summary>As programmed the cone goes far past its end point.</summary>
    LessHeat,

    /// <summary>The cone is down already: let the kiln cool.</summary>
    Done,

    /// <summary>The firing was interrupted and can go on from here.</summary>
    Resume,

    /// <summary>The firing was interrupted and the kiln has cooled so far that it begins anew; what the cones did counts.</summary>
    StartOver,

    /// <summary>Nothing that was tried puts the cone down from here.</summary>
    OutOfReach,
}

/// <summary>What an option changes.</summary>
public enum ForecastChange
{
    /// <summary>The hold of the hottest segment.</summary>
    Hold,

    /// <summary>The target of the hottest segment.</summary>
    Peak,
}

/// <summary>A forecast with its lines for a figure.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="Log">Makes the log.</param>
/// <param name="Ahead">Makes what is foreseen, from the last sample on, in the time of the log; null where nothing is left to
/// happen.</param>
public sealed record Forecast(ForecastAnswer Answer, Func<FiringCurve> Log, Func<FiringCurve>? Ahead);
