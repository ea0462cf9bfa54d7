using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Schedules;

/// <summary>The firing as an operating procedure: practice of the trade, under the kiln's manual, local codes and licensed
/// practice.</summary>
/// <param name="TimeZone">IANA name of the zone whose clock the moments show; null when the start had an offset alone.</param>
/// <param name="Attendance">The hours that need a person, in order.</param>
/// <param name="Checks">When to look, and what is expected then, in order.</param>
/// <param name="LatestShutOffMinutes">A kiln that still climbs or holds its peak then is switched off by hand, minutes from the start;
/// null where no controller ends the firing.</param>
/// <param name="LatestShutOff">The same.</param>
/// <param name="PeakSpan">Between which times the peak is to be reckoned with.</param>
/// <param name="OpeningSpan">The same of the earliest opening; null when unknown.</param>
/// <param name="Procedure">The steps, phase by phase.</param>
public sealed record FitOperation(
    string? TimeZone,
    IReadOnlyList<AttendancePeriod> Attendance,
    IReadOnlyList<CheckTime> Checks,
    double? LatestShutOffMinutes,
    DateTimeOffset? LatestShutOff,
    TimeSpanForeseen PeakSpan,
    TimeSpanForeseen? OpeningSpan,
    IReadOnlyList<ProcedureStep> Procedure);

/// <summary>Hours in which somebody stands at the kiln.</summary>
/// <param name="FromMinutes">From, minutes from the start.</param>
/// <param name="ToMinutes">To.</param>
/// <param name="Message">Why.</param>
/// <param name="Sources">Ids of the sources; empty for a rule that was sent.</param>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
public sealed record AttendancePeriod(
    double FromMinutes, double ToMinutes, Message Message, IReadOnlyList<string> Sources, DateTimeOffset? From, DateTimeOffset? To);

/// <summary>When to look at the kiln and write down what it reads.</summary>
/// <param name="Minutes">When, minutes from the start.</param>
/// <param name="At">The same.</param>
/// <param name="ExpectedCelsius">What the meter is expected to read, °C.</param>
/// <param name="Message">What to look at.</param>
public sealed record CheckTime(double Minutes, DateTimeOffset? At, double ExpectedCelsius, Message Message);

/// <summary>A moment with the span that has to be reckoned with; a judgement of the data package (schedule-defaults).</summary>
/// <param name="EarliestMinutes">From, minutes from the start.</param>
/// <param name="LatestMinutes">To.</param>
/// <param name="Earliest">From.</param>
/// <param name="Latest">To.</param>
public sealed record TimeSpanForeseen(double EarliestMinutes, double LatestMinutes, DateTimeOffset? Earliest, DateTimeOffset? Latest);

/// <summary>A step of the procedure.</summary>
/// <param name="Id">Its row in the data package.</param>
/// <param name="Phase">When it is done.</param>
/// <param name="Message">The step.</param>
/// <param name="Confidence">How far it can be trusted.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record ProcedureStep(
    string Id, ProcedurePhase Phase, Message Message, Confidence Confidence, IReadOnlyList<string> Sources);
