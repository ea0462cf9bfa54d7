using ConeService.Contract.Schedules;

namespace ConeService.Planning.Requests;

/// <summary>
/// A backlog, the kilns and a calendar. Moments are <c>2026-12-04T18:00</c> by the clock of <paramref name="TimeZone"/>, or have an offset.
/// </summary>
/// <param name="Horizon">What is planned: firings start within it. At most 26 weeks.</param>
/// <param name="Kilns">1 to 20 kilns, each with an id of its own.</param>
/// <param name="Pieces">1 to 5,000 pieces, those alike counted each.</param>
/// <param name="TimeZone">IANA name, such as Europe/Berlin; left out: every moment has its offset.</param>
/// <param name="Staffed">When somebody is there to unload; left out: always.</param>
/// <param name="Firings">Firings that stand: they keep start, kind and pieces.</param>
/// <param name="Announced">A former plan, of which as little as possible is changed.</param>
/// <param name="Objective">What a plan costs, and how full a kiln shall be.</param>
public sealed record PlanRequest(
    PlanSpan? Horizon = null,
    IReadOnlyList<PlanKiln?>? Kilns = null,
    IReadOnlyList<PlanPiece?>? Pieces = null,
    string? TimeZone = null,
    IReadOnlyList<PlanSpan?>? Staffed = null,
    IReadOnlyList<GivenFiring?>? Firings = null,
    IReadOnlyList<GivenFiring?>? Announced = null,
    PlanObjective? Objective = null);

/// <summary>From one moment to a later one.</summary>
/// <param name="From">The first moment.</param>
/// <param name="To">The moment after the last.</param>
public sealed record PlanSpan(string? From = null, string? To = null);

/// <summary>What a plan is judged by, after pieces late and pieces undone.</summary>
/// <param name="Cost">Energy: kWh × price (without a tariff kWh alone). Firings: 1 a firing.</param>
/// <param name="Tariff">Price of energy; its periods are not read here.</param>
/// <param name="MinimumFillPercent">How full a kiln must be unless a piece in it has a date within the horizon, 0 to 100 %; left out:
/// 70.</param>
public sealed record PlanObjective(
    CostBasis Cost = CostBasis.Energy, FitTariff? Tariff = null, double? MinimumFillPercent = null);

/// <summary>What a firing costs.</summary>
public enum CostBasis
{
    /// <summary>Its energy.</summary>
    Energy,

    /// <summary>One, whatever it is.</summary>
    Firings,
}
