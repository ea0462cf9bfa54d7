using ConeService.Planning.Bounds;
using ConeService.Planning.Judge;
using ConeService.Planning.Model;
using Google.OrTools.Sat;

namespace ConeService.Planning.Solver;

/// <summary>Solves a model level by level: lateness, firings left undone, cost, changes, waiting; each with those before held.</summary>
internal sealed class LevelSolver(Problem problem, PlanModel plan, int seed)
{
    // Of the time that is left, how much a level takes at most; what it leaves goes to the next.
    private static readonly double[] Shares = [0.5, 0.5, 0.7, 0.6, 1];

    /// <summary>What is known after it: the best plan, and what none betters.</summary>
    /// <param name="from">A plan to begin with; what is not open for change in it stands in the model too.</param>
    /// <param name="known">What no plan of this model betters; for a part of a problem what it can't better either.</param>
    /// <param name="time">What may be spent.</param>
    /// <param name="levels">How many of the levels are solved.</param>
    public (Draft Best, PlanBounds Bounds) Solve(Draft from, PlanBounds known, SolverTime time, int levels = 5)
    {
        var (best, bounds, proven) = (from, known, true);
        plan.Hint(from);
        for (var level = 0; level < levels && !time.IsOver; level++)
        {
            var (sum, now, least) = Level(level, best.Score, bounds);
            if (sum.IsConstant) continue;
            if (now > least || !proven)
            {
                plan.Model.Minimize(sum.Expression);
                var part = time.Share(Shares[level]);
                using var run = new SolverRun(plan.Model, part, seed);
                var before = part.Work;
                var status = run.Solve();
                time.Spend(double.IsInfinity(before) ? 0 : before - part.Work);
                if (status is CpSolverStatus.Infeasible or CpSolverStatus.ModelInvalid) return (best, bounds);
                if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
                {
                    var found = plan.Read(run);
                    if (DraftJudge.Faults(problem, found).Count > 0) return (best, bounds);
                    if (found.Score < best.Score) best = found;
                    run.Hint();
                }

                if (proven) bounds = Bounds(level, bounds, (long)Math.Ceiling(run.Bound - 1e-6), best.Score);
                proven &= status == CpSolverStatus.Optimal;
                now = Level(level, best.Score, bounds).Now;
            }

            plan.Model.Add(sum.Expression <= now);
        }

        return (best, bounds);
    }

    private (Sum Sum, long Now, long Least) Level(int level, Score score, PlanBounds bounds) => level switch
    {
        0 => (plan.Late, score.Late, bounds.Late),
        1 => (plan.Undone, score.Undone, bounds.Undone),
        2 => (Weighed(), score.Weighed, problem.Announced.Count == 0 ? bounds.CostOf(score) ?? 0 : 0),
        3 => (plan.Changes, score.Changes, 0),
        _ => (plan.Waiting, score.Waiting, 0),
    };

    private Sum Weighed()
    {
        var weighed = new Sum();
        weighed.Add(plan.Cost);
        weighed.Add(plan.Changes, problem.ChangePrice);
        return weighed;
    }

    // The cost of one level is that of plans no worse than the best in those before.
    private PlanBounds Bounds(int level, PlanBounds bounds, long found, Score best) => level switch
    {
        0 => bounds with { Late = Math.Max(bounds.Late, found) },
        1 => bounds with { Undone = (int)Math.Max(bounds.Undone, found) },
        2 when problem.Announced.Count == 0 => bounds.WithCost(found, best),
        _ => bounds,
    };
}
