using ConeService.Contract.Answers;
using ConeService.Contract.Equations;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Kilns;

/// <summary>A kiln as its firings show it, and what changes from firing to firing.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Kiln">The kiln with what was estimated, to be sent with the next fit; what could not be told stands as it was sent;
/// thermocouple and shelves, which a fit does not read, are left out.</param>
/// <param name="WallThicknessMillimetres">Thickness of the wall that loses and stores as the kiln does, mm; one material through.</param>
/// <param name="LeakFactor">How leaky against a closed kiln.</param>
/// <param name="Kilowatts">Rated power that explains how it climbs, kW, at the voltages and age sent.</param>
/// <param name="Offset">True temperature minus that of the meter by all witness cones; null without any.</param>
/// <param name="Firings">Each firing against the estimate.</param>
/// <param name="Trend">What changes from firing to firing.</param>
/// <param name="Verdict">What a keeper should know, the most important first.</param>
/// <param name="Notes">How far to trust it.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Assumed">Parameters that were left out, with what was taken.</param>
/// <param name="Confidence">That of the kiln model: an estimate.</param>
public sealed record CalibrateAnswer(
    string DatasetVersion,
    Kiln Kiln,
    KilnEstimate WallThicknessMillimetres,
    KilnEstimate LeakFactor,
    KilnEstimate Kilowatts,
    MeterOffset? Offset,
    IReadOnlyList<CalibratedFiring> Firings,
    CalibrationTrend Trend,
    IReadOnlyList<Message> Verdict,
    IReadOnlyList<Message> Notes,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed,
    Confidence Confidence) : IComputed
{
    Address IComputed.Explain => EquationIds.Address(EquationIds.KilnHeatBalance);
}

/// <summary>One number of a kiln as its firings show it.</summary>
/// <param name="Value">The estimate; null where the firings do not tell it.</param>
/// <param name="StandardError">Its standard error, from the scatter about the model; null without an estimate.</param>
/// <param name="Before">What was stated or assumed.</param>
/// <param name="WhyNot">Why it can't be told; null with an estimate.</param>
public sealed record KilnEstimate(double? Value, double? StandardError, double Before, Message? WhyNot);

/// <summary>One firing against the estimate.</summary>
/// <param name="Id">Its name, or number.</param>
/// <param name="PeakCelsius">Highest temperature, smoothed over five minutes, °C.</param>
/// <param name="EndMinutes">From the first sample to the end of the programme, where the kiln begins to cool by itself, minutes.</param>
/// <param name="ExpectedEndMinutes">The same as the estimated kiln would take; null without its segments, or where it would stall
/// or take half as long again as log and segments do.</param>
/// <param name="MeterKilowattHours">What the meter counted.</param>
/// <param name="ExpectedKilowattHours">What the estimated kiln takes along the log.</param>
/// <param name="Kilowatts">Rated power by this firing alone; null where it shows none.</param>
/// <param name="MissCelsiusDifference">How far the log is from the estimated kiln, root mean square of quarters of an hour, °C; without
/// segments of the cooling alone, and null without that.</param>
public sealed record CalibratedFiring(
    string Id,
    double PeakCelsius,
    double EndMinutes,
    double? ExpectedEndMinutes,
    double? MeterKilowattHours,
    double ExpectedKilowattHours,
    double? Kilowatts,
    double? MissCelsiusDifference);

/// <summary>What changes from firing to firing; each null when fewer than three firings tell it.</summary>
/// <param name="Offset">The offset of the thermocouple.</param>
/// <param name="Duration">Minutes of the firing over those of the estimated kiln at the same programme and load.</param>
/// <param name="Energy">kWh over those of the estimated kiln along the same log and with the same load.</param>
/// <param name="Power">Power of the elements.</param>
public sealed record CalibrationTrend(MeterTrend? Offset, CreepTrend? Duration, CreepTrend? Energy, CreepTrend? Power);

/// <summary>How a quantity changes from firing to firing at equal work: a line by least squares.</summary>
/// <param name="PercentPerFiring">Change from one firing to the next, per cent of the mean.</param>
/// <param name="StandardErrorPercent">Its standard error.</param>
/// <param name="Chance">Chance of a change so large or larger were there none: a t-test, two-sided.</param>
/// <param name="Creeps">True when that is less than one in twenty.</param>
/// <param name="Firings">How many firings it rests on.</param>
public sealed record CreepTrend(double PercentPerFiring, double StandardErrorPercent, double Chance, bool Creeps, int Firings);
