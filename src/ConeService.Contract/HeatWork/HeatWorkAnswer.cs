using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Equations;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.HeatWork;

/// <summary>What a firing did, or will do, to every cone of a chart.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Chart">The chart.</param>
/// <param name="Reached">The hottest cone that is down together with all cooler ones; null when none is down.</param>
/// <param name="Next">The first cone that is not down; null when all are.</param>
/// <param name="Fraction">How far from the reached cone to the next, 0 to 0.9999 and never 1; null without both. Never add it to a cone
/// number.</param>
/// <param name="Reading">The result as one says it: “6 and 0.47 of the way to 7”.</param>
/// <param name="PeakCelsius">Highest temperature, °C.</param>
/// <param name="PeakFahrenheit">Highest temperature, °F.</param>
/// <param name="PeakAtMinutes">When it was first reached, minutes since the start.</param>
/// <param name="DurationMinutes">From the first moment to the last, minutes.</param>
/// <param name="Above1000CelsiusMinutes">Time above 1000 °C, minutes.</param>
/// <param name="RateOverLast100CelsiusPerHour">Mean rate over the last 100 °C of the climb, which ends 1 °C below the peak, °C/h;
/// null when the climb is shorter.</param>
/// <param name="CoolingThrough573CelsiusPerHour">Mean cooling rate from 598 to 548 °C, where quartz shrinks, °C/h; null when the
/// history ends above.</param>
/// <param name="Cones">Every cone of the chart, in the order in which they go down.</param>
/// <param name="OutOfOrder">Cones that are down although a cooler one is not.</param>
/// <param name="LeftOut">Cones of the chart that can't be judged.</param>
/// <param name="Thermocouple">The thermocouple taken.</param>
/// <param name="Uncertainty">The parts of the uncertainty that all cones share.</param>
/// <param name="Log">The samples of a log; null for a programme.</param>
/// <param name="Basis">The weaker basis of the reached and the next cone.</param>
/// <param name="Confidence">The weakest of the cells in computedFrom; a firing is derived at best.</param>
/// <param name="ComputedFrom">The printed cells that the curves of the reached and the next cone go through, and those of a curve that
/// one of them borrows.</param>
/// <param name="BorrowedFrom">Whose curve one of them borrows; null where none does.</param>
/// <param name="Warnings">What was found, and what must be known about the result.</param>
/// <param name="Notes">What holds for every such answer.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Assumed">Parameters that were left out, with what was taken.</param>
public sealed record HeatWorkAnswer(
    string DatasetVersion,
    string Chart,
    string? Reached,
    string? Next,
    double? Fraction,
    Message Reading,
    double PeakCelsius,
    double PeakFahrenheit,
    double PeakAtMinutes,
    double DurationMinutes,
    double Above1000CelsiusMinutes,
    double? RateOverLast100CelsiusPerHour,
    double? CoolingThrough573CelsiusPerHour,
    IReadOnlyList<ConeResult> Cones,
    IReadOnlyList<string> OutOfOrder,
    IReadOnlyList<string> LeftOut,
    ThermocoupleUsed Thermocouple,
    SharedUncertainty Uncertainty,
    LogSummary? Log,
    Basis Basis,
    Confidence Confidence,
    IReadOnlyList<PrintedPoint> ComputedFrom,
    BorrowedShape? BorrowedFrom,
    IReadOnlyList<HeatWarning> Warnings,
    IReadOnlyList<Message> Notes,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed) : IComputed
{
    Address IComputed.Explain => EquationIds.Address(EquationIds.BendingProgress);
}

/// <summary>What happened to one cone.</summary>
/// <param name="Cone">The cone.</param>
/// <param name="Progress">Bending progress: 0 untouched, 1 just down, beyond 1 past it; to six decimals. 100 stands for over 100.</param>
/// <param name="BendDegrees">Lean from upright, degrees: 8 as set, 90 down. Good to 5 °C of firing at 1 o'clock, to 2 °C from 4 o'clock
/// on.</param>
/// <param name="Clock">The lean as the hour of a clock hand: 6 when down.</param>
/// <param name="MarginCelsiusDifference">How far past its end point (+) or short of it (−), in degrees of a 60 °C/h firing, °C.</param>
/// <param name="MarginFahrenheitDifference">The same, °F.</param>
/// <param name="DownAtMinutes">When it went down, minutes since the start; null when it stayed up.</param>
/// <param name="ProbabilityDown">Probability that a real cone of this number is down, Φ(margin/σ).</param>
/// <param name="SigmaCelsiusDifference">σ of the margin, °C.</param>
/// <param name="Basis">What its curve rests on at the rate of this firing.</param>
public sealed record ConeResult(
    string Cone, double Progress, double BendDegrees, double Clock, double MarginCelsiusDifference,
    double MarginFahrenheitDifference, double? DownAtMinutes,
    double ProbabilityDown, double SigmaCelsiusDifference, Basis Basis);

/// <summary>The thermocouple taken, with its tolerance at the peak.</summary>
/// <param name="Type">Letter.</param>
/// <param name="Standard">The standard.</param>
/// <param name="Class">The class.</param>
/// <param name="Firings">Firings above 1100 °C it has seen.</param>
/// <param name="ToleranceCelsiusDifference">How far a new one may read off at the peak, ±°C.</param>
public sealed record ThermocoupleUsed(string Type, string Standard, string Class, double Firings, double ToleranceCelsiusDifference);

/// <summary>The samples of a log.</summary>
/// <param name="Samples">Samples sent.</param>
/// <param name="Used">Samples used, after duplicates were merged and spikes and excursions cut out (see warnings).</param>
/// <param name="DecidedBy">Column of the thermocouple that the answer is of, the one with the least heat work; null when the log has
/// one.</param>
/// <param name="SpreadCelsiusDifference">How much further the hottest thermocouple went than the coolest, in degrees of a 60 °C/h firing,
/// °C; null when the log has one.</param>
/// <param name="Zones">Each thermocouple of the log, from the coolest to the hottest; empty when the log has one.</param>
public sealed record LogSummary(
    int Samples, int Used, string? DecidedBy, double? SpreadCelsiusDifference, IReadOnlyList<LogZoneResult> Zones);

/// <summary>What one thermocouple of a log says of the firing.</summary>
/// <param name="Column">Name of its column.</param>
/// <param name="Reached">The hottest cone that is down together with all cooler ones; null when none is down.</param>
/// <param name="Next">The first cone that is not down; null when all are.</param>
/// <param name="Fraction">How far from the reached cone to the next, 0 to 1; null without both.</param>
/// <param name="Reading">The result as one says it.</param>
/// <param name="PeakCelsius">Highest temperature, °C.</param>
/// <param name="Used">Samples used.</param>
public sealed record LogZoneResult(
    string Column, string? Reached, string? Next, double? Fraction, Message Reading, double PeakCelsius, int Used);
