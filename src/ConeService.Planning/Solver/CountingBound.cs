using ConeService.Planning.Bounds;
using ConeService.Planning.Model;
using ConeService.Planning.Search;

namespace ConeService.Planning.Solver;

/// <summary>
/// What no plan betters, by counting: how many firings of each type a kiln runs in each span of its starts, and how many pieces are in them
/// together. Chains are left out, but for the earliest that each firing of a piece can be, and dates, but for those that must be kept; the
/// room is that of all firings of a type and span in one. Each of these lets more through than a plan may do, so what is least here is
/// least for plans. One span is solved first: with more the question is closer to the calendar, and harder.
/// </summary>
internal sealed class CountingBound(Problem problem, IReadOnlyList<Opening> openings, int seed)
{
    private static readonly int[] Spans = [1, 2, 4];

    /// <summary>The bounds.</summary>
    /// <param name="score">The best plan known: the cost found is that of plans no later and with no more undone.</param>
    /// <param name="known">What is known already.</param>
    /// <param name="time">What may be spent.</param>
    public PlanBounds Of(Score score, PlanBounds known, SolverTime time)
    {
        // Pinned firings may hold what nothing else would; of them nothing is counted.
        if (problem.Pins.Count > 0 || openings.Count == 0) return known;
        var bounds = known;
        foreach (var spans in Spans)
        {
            if (time.IsOver || bounds.Reached(score)) break;
            var before = time.Work;
            var part = time.Share(spans == Spans[^1] ? 1 : 0.75);
            var had = part.Work;
            bounds = new CountingModel(problem, openings, spans, score.Late == 0).Bounds(score, bounds, part, seed);
            if (!double.IsInfinity(before)) time.Spend(had - part.Work);
        }

        return bounds;
    }
}
