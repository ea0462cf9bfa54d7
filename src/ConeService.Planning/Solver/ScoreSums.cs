using ConeService.Planning.Model;

namespace ConeService.Planning.Solver;

/// <summary>What a plan is worth, as sums of the variables of a model.</summary>
internal sealed class ScoreSums(Problem problem)
{
    /// <summary>The sums.</summary>
    public (Sum Late, Sum Undone, Sum Cost, Sum Changes, Sum Waiting) Of(PlanModel plan)
    {
        var (late, undone, cost, waiting) = (new Sum(), new Sum(), new Sum(), new Sum());
        // Of one left undone what is counted is what remains when it is taken off again.
        foreach (var stage in problem.Stages)
        {
            var item = problem.Items[stage.Item];
            undone.Add(item.Count);
            if (!stage.IsLast) continue;
            late.Add(item.Count * item.UndoneLateness);
            waiting.Add((long)item.Count * Left(item));
        }

        foreach (var (opening, fired) in plan.Open) cost.Add(fired, opening.Cost);
        foreach (var take in plan.Takes)
        {
            undone.Add(take.Count, -1);
            if (!problem.Stages[take.Stage].IsLast) continue;
            var item = problem.ItemOf(take.Stage);
            late.Add(take.Count, Problem.Lateness(item, take.End) - item.UndoneLateness);
            waiting.Add(take.Count, Scorer.Hours(take.End - Math.Max(0, item.Ready)) - Left(item));
        }

        foreach (var firing in plan.Fixed)
        {
            var kiln = problem.Kilns[firing.Kiln];
            var end = kiln.EndOf(firing.Start, firing.Type);
            cost.Add(kiln.Types[firing.Type].Cost);
            foreach (var (stage, count) in firing.Contents)
            {
                undone.Add(-count);
                if (!problem.Stages[stage].IsLast) continue;
                var item = problem.ItemOf(stage);
                late.Add(count * (Problem.Lateness(item, end) - item.UndoneLateness));
                waiting.Add((long)count * (Scorer.Hours(end - Math.Max(0, item.Ready)) - Left(item)));
            }
        }

        return (late, undone, cost, Changes(plan), waiting);
    }

    private int Left(Item item) => Scorer.Hours(problem.Horizon - Math.Max(0, item.Ready));

    private Sum Changes(PlanModel plan)
    {
        var changes = new Sum();
        if (problem.Announced.Count == 0) return changes;
        foreach (var (_, fired) in plan.Open) changes.Add(fired, Scorer.FiringMoved);
        changes.Add(Scorer.FiringMoved * plan.Fixed.Count(f => !f.IsPinned));
        foreach (var told in problem.Announced)
        {
            bool Held(int kiln, int start, int type) =>
                kiln == told.Kiln && start == told.Start && problem.Kilns[kiln].Types[type].Menu == told.Menu;
            var standing = plan.Fixed.FirstOrDefault(f => !f.IsPinned && Held(f.Kiln, f.Start, f.Type));
            // One held counts neither as made nor as given up.
            var fired = plan.Open.Where(o => Held(o.Opening.Booking.Kiln, o.Opening.Booking.Start, o.Opening.Booking.Type)).ToList();
            changes.Add(standing is null ? Scorer.FiringMoved : -Scorer.FiringMoved);
            foreach (var one in fired) changes.Add(one.Fired, -2 * Scorer.FiringMoved);
            foreach (var (stage, count) in told.Contents)
            {
                if (standing is not null)
                {
                    changes.Add(Math.Max(0, count - PlanModel.CountOf(standing, stage)));
                    continue;
                }

                var missing = plan.Model.NewIntVar(0, count, "");
                var sum = new Sum();
                sum.Add(missing);
                foreach (var take in plan.Takes.Where(t => t.Stage == stage && t.Kiln == told.Kiln && t.Start == told.Start
                    && t.Menu == told.Menu)) sum.Add(take.Count);
                plan.Model.Add(sum.Expression >= count);
                changes.Add(missing);
            }
        }

        return changes;
    }
}
