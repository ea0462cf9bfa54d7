using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Requests;
using ConeService.Contract.Schedules;

namespace ConeService.Contract.Plans;

/// <summary>
/// A backlog, the kilns and a calendar: what a firing plan is made of. Moments are <c>2026-12-04T18:00</c> by the clock of
/// <paramref name="TimeZone"/>, or have an offset.
/// </summary>
/// <param name="Horizon">What is planned: firings start within it. At most 26 weeks.</param>
/// <param name="Kilns">1 to 20 kilns, each with an id of its own; at most 200 firings without minutes and energy, those for thick or damp
/// ware counted each.</param>
/// <param name="Pieces">The backlog: 1 to 5,000 pieces, those alike counted each. Different pieces, each of their firings counted: at most
/// 5,000, and times firings of all menus at most 200,000; at most 1,000 different ones that no menu accepts.</param>
/// <param name="TimeZone">IANA name, such as Europe/Berlin; left out: every moment has its offset.</param>
/// <param name="Staffed">When somebody is there to unload; left out: always.</param>
/// <param name="Firings">Firings that stand: they keep start, kind and pieces.</param>
/// <param name="Announced">The firings of a former plan, of which as little as possible is changed.</param>
/// <param name="Objective">What a plan costs, and how full a kiln shall be.</param>
[Needs(nameof(Horizon), nameof(Kilns), nameof(Pieces))]
public sealed record PlanRequest(
    PlanSpan? Horizon = null,
    [property: Items(1, PlanLimits.MostKilns)] IReadOnlyList<PlanKiln?>? Kilns = null,
    [property: Items(1, PlanLimits.MostPieces)] IReadOnlyList<PlanPiece?>? Pieces = null,
    string? TimeZone = null,
    [property: Items(0, PlanLimits.MostMoments)] IReadOnlyList<PlanSpan?>? Staffed = null,
    [property: Items(0, PlanLimits.MostFirings)] IReadOnlyList<GivenFiring?>? Firings = null,
    [property: Items(0, PlanLimits.MostFirings)] IReadOnlyList<GivenFiring?>? Announced = null,
    PlanObjective? Objective = null);

/// <summary>From one moment to a later one.</summary>
/// <param name="From">The first moment.</param>
/// <param name="To">The moment after the last.</param>
[Needs(nameof(From), nameof(To))]
public sealed record PlanSpan(string? From = null, string? To = null);

/// <summary>What a plan is judged by, after pieces late and pieces undone.</summary>
/// <param name="Cost">energy: kWh × price (without a tariff kWh alone). firings: 1 a firing. Left out: energy.</param>
/// <param name="Tariff">Price of energy; its periods are not read here.</param>
/// <param name="MinimumFillPercent">How full a kiln must be unless a piece in it has a date within the horizon, 0 to 100 %; left out:
/// 70.</param>
public sealed record PlanObjective(
    [property: WordsOf(typeof(CostBasis))] string? Cost = null,
    FitTariff? Tariff = null,
    [property: Range(0.0, 100.0)] double? MinimumFillPercent = null);

/// <summary>What a firing costs.</summary>
public enum CostBasis
{
    /// <summary>Its energy.</summary>
    Energy,

    /// <summary>One, whatever it is.</summary>
    Firings,
}

/// <summary>How much may be planned at once.</summary>
public static class PlanLimits
{
    /// <summary>Kilns.</summary>
    public const int MostKilns = 20;

    /// <summary>Pieces, those alike counted each.</summary>
    public const int MostPieces = 5000;

    /// <summary>Firings that a kiln runs.</summary>
    public const int MostMenu = 20;

    /// <summary>Starts of a kiln, times of a list.</summary>
    public const int MostMoments = 1000;

    /// <summary>Firings that stand, or were announced.</summary>
    public const int MostFirings = 500;

    /// <summary>Later firings of a piece.</summary>
    public const int MostThen = 5;

    /// <summary>Different pieces, each of their firings counted.</summary>
    public const int MostWares = 5000;

    /// <summary>Different pieces, each with its later firings, times firings of all menus.</summary>
    public const int MostJudgements = 200_000;

    /// <summary>Different pieces that no firing of the menus accepts.</summary>
    public const int MostRefused = 1000;

    /// <summary>Different coats, of which each spoils the others, that one firing of a menu accepts.</summary>
    public const int MostSpoiling = 100;

    /// <summary>Firings whose hours or energy were not sent: of each kiln and entry of its menu as many as ware is damp or thick.</summary>
    public const int MostFits = 200;

    /// <summary>The shortest search, s.</summary>
    public const double LeastSeconds = 0.5;

    /// <summary>The longest search, s.</summary>
    public const double MostSeconds = 30;

    /// <summary>The usual search, s.</summary>
    public const double UsualSeconds = 5;
}
