using ConeService.Planning.Model;

namespace ConeService.Planning.Bounds;

/// <summary>What no plan betters, level by level as plans are judged.</summary>
/// <param name="Late">Least lateness.</param>
/// <param name="Undone">Fewest firings of pieces left undone; where <paramref name="Late"/> was proven, of plans that are no later.</param>
/// <param name="Cost">Least cost of a plan that is no worse than the next two, in 1/100.</param>
/// <param name="CostLate">Lateness up to which the cost holds.</param>
/// <param name="CostUndone">Firings left undone up to which the cost holds.</param>
internal sealed record PlanBounds(long Late, int Undone, long Cost, long CostLate = long.MaxValue, long CostUndone = long.MaxValue)
{
    /// <summary>Whether a plan is as good as any in late and undone.</summary>
    public bool IsBestInDates(Score score) => score.Late <= Late && score.Undone <= Undone;

    /// <summary>What plans that are late and undone no more than one cost at least, in 1/100; null where that is not known.</summary>
    public long? CostOf(Score score) => score.Late <= CostLate && score.Undone <= CostUndone ? Cost : null;

    /// <summary>Whether nothing is better than a plan in late, undone and cost; changes against a former plan are never proven.</summary>
    public bool Reached(Score score) => IsBestInDates(score) && CostOf(score) is { } least && score.Cost <= least && score.Changes == 0;

    /// <summary>The same with a cost that was found for plans no worse than one, where it says more.</summary>
    public PlanBounds WithCost(long cost, Score score) =>
        CostOf(score) is { } known && known >= cost ? this : this with { Cost = cost, CostLate = score.Late, CostUndone = score.Undone };
}
