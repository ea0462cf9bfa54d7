using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Equations;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.HeatWork;

/// <summary>A firing with the witness cones that stood in it.</summary>
[Needs(nameof(Units), nameof(Observations))]
public record WitnessedFiring : HeatWorkRequest
{
    /// <summary>Name of the firing, for the answer; left out: its number.</summary>
    public string? Id { get; init; }

    /// <summary>What the cones looked like afterwards.</summary>
    [Items(1, HeatWorkLimits.MostObservations)]
    public IReadOnlyList<WitnessCone?>? Observations { get; init; }
}

/// <summary>One firing with its witness cones, or several to be pooled.</summary>
public sealed record CompareRequest : WitnessedFiring
{
    /// <summary>Several firings of one kiln and thermocouple in the order of time, instead of one.</summary>
    [Items(1, HeatWorkLimits.MostFirings)]
    public IReadOnlyList<WitnessedFiring?>? Firings { get; init; }
}

/// <summary>What one witness cone looked like. Give exactly one of look, clock and degrees.</summary>
/// <param name="Cone">The cone, as text.</param>
/// <param name="Look">down (tip at the height of the base or beyond), started (it moved, but not to 2 o'clock), or standing (nobody would
/// say that it moved: anything before 2 o'clock).</param>
/// <param name="Clock">The cone as a clock hand: 6 when down.</param>
/// <param name="Degrees">The lean from upright, degrees: 8 as set, 90 down.</param>
[Needs(nameof(Cone))]
public sealed record WitnessCone(
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Cone = default,
    [property: AllowedValues("down", "started", "standing")] string? Look = null,
    [property: Range(0.0, 12.0)] double? Clock = null,
    [property: Range(0.0, 180.0)] double? Degrees = null);

/// <summary>How far the meter is off, judged by witness cones.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Trend">How the offset changes from firing to firing; null when fewer than three firings give an estimate.</param>
/// <param name="Pooled">All firings together as if the offset were one number, which it is not where the trend says that it drifts; null
/// for a single one.</param>
/// <param name="Firings">Each firing.</param>
/// <param name="Notes">What a user of the estimate must know.</param>
/// <param name="Basis">The weakest basis of the cones that were seen.</param>
/// <param name="Confidence">The weakest of the cells that their curves go through; an estimate from cones is derived at best.</param>
/// <param name="Sources">Ids of the sources of all firings.</param>
/// <param name="Assumed">Parameters that were left out, with what was taken, each firing's where it stands.</param>
public sealed record CompareAnswer(
    string DatasetVersion, MeterTrend? Trend, MeterOffset? Pooled, IReadOnlyList<ComparedFiring> Firings, IReadOnlyList<Message> Notes,
    Basis Basis, Confidence Confidence, IReadOnlyList<string> Sources, IReadOnlyList<Assumption> Assumed) : IComputed
{
    Address IComputed.Explain => EquationIds.Address(EquationIds.MeterOffset);
}

/// <summary>One firing against its witness cones.</summary>
/// <param name="Id">Name of the firing.</param>
/// <param name="Offset">How far the meter was off.</param>
/// <param name="Observations">Each cone, as seen and as computed.</param>
/// <param name="Contradictions">Observations that do not fit together, in words; empty when they do.</param>
/// <param name="HeatWork">What the meter alone says of the firing.</param>
public sealed record ComparedFiring(
    string Id, MeterOffset Offset, IReadOnlyList<ComparedCone> Observations,
    IReadOnlyList<Message> Contradictions, HeatWorkAnswer HeatWork);

/// <summary>An estimate of the true temperature minus that of the meter.</summary>
/// <param name="CelsiusDifference">True minus meter, °C: positive when the kiln was hotter than the meter said. Null where the cones only
/// bound it on one side; where they bound it on both and none leans, the least that they allow.</param>
/// <param name="StandardErrorCelsiusDifference">Its standard error, °C; null without an estimate.</param>
/// <param name="FahrenheitDifference">The same as a difference in °F.</param>
/// <param name="StandardErrorFahrenheitDifference">Its standard error, °F.</param>
/// <param name="AtLeastCelsiusDifference">Lower bound by the cones that are down where no cone leans, °C.</param>
/// <param name="AtMostCelsiusDifference">Upper bound by the standing cones where no cone leans, °C; within the errors it may lie below the
/// lower one.</param>
/// <param name="Observations">How many cones it rests on.</param>
/// <param name="Message">The estimate in words.</param>
public sealed record MeterOffset(
    double? CelsiusDifference, double? StandardErrorCelsiusDifference, double? FahrenheitDifference,
    double? StandardErrorFahrenheitDifference,
    double? AtLeastCelsiusDifference,
    double? AtMostCelsiusDifference, int Observations, Message Message);

/// <summary>One witness cone, as seen and as computed from the meter.</summary>
/// <param name="Cone">The cone.</param>
/// <param name="Seen">down, started, standing, or leaning.</param>
/// <param name="SeenDegrees">The lean that was seen, degrees; null for a look.</param>
/// <param name="ComputedDegrees">The lean computed from the meter, degrees.</param>
/// <param name="OffsetCelsiusDifference">Offset of the meter that would explain this cone alone, °C;
/// for down and standing the bound it sets, for started the middle of its span.</param>
/// <param name="SigmaCelsiusDifference">σ of that, °C.</param>
/// <param name="ResidualSigmas">How far this cone lies from the estimate, in σ; 0 where a bound is kept.</param>
public sealed record ComparedCone(
    string Cone, string Seen, double? SeenDegrees,
    double ComputedDegrees, double OffsetCelsiusDifference, double SigmaCelsiusDifference, double ResidualSigmas);
