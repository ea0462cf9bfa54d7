using ConeService.Planning.Model;

namespace ConeService.Planning.Bounds;

/// <summary>What no plan betters, level by level as plans are judged.</summary>
/// <param name="Late">Least lateness.</param>
/// <param name="Undone">Fewest firings of pieces left undone.</param>
/// <param name="Cost">Least cost of a plan that is as good in both, in 1/100.</param>
internal sealed record PlanBounds(long Late, int Undone, long Cost)
{
    /// <summary>Whether a plan is as good as any in late and undone.</summary>
    public bool IsBestInDates(Score score) => score.Late <= Late && score.Undone <= Undone;

    /// <summary>Whether nothing is better than a plan in late, undone and cost; changes against a former plan are never proven.</summary>
    public bool Reached(Score score) => IsBestInDates(score) && score.Cost <= Cost && score.Changes == 0;
}
