using ConeService.Planning.Model;

namespace ConeService.Planning.Solver;

/// <summary>
/// Chains by cumulated counts: at each loading no more of a stage may have been taken than was unloaded from the one before it and handled,
/// less what is kept for pinned firings.
/// </summary>
internal sealed class ChainConstraints(PlanModel plan, Problem problem)
{
    private readonly ILookup<int, Take> takes = plan.Takes.ToLookup(t => t.Stage);

    /// <summary>Adds them.</summary>
    public void Add()
    {
        foreach (var stage in problem.Stages)
        {
            var before = stage.Number == 0 ? -1 : stage.Index - 1;
            if (!takes[stage.Index].Any() && (before < 0 || !takes[before].Any())) continue;
            var pinned = problem.Pins.SelectMany(p => p.Contents).Where(c => c.Stage == stage.Index).Sum(c => c.Count);
            var standing = plan.Fixed.Select(f =>
                (Load: problem.Kilns[f.Kiln].LoadAt(f.Start), Count: PlanModel.CountOf(f, stage.Index) - Pinned(f, stage.Index)))
                .Where(f => f.Count > 0).ToList();
            var all = new Sum();
            foreach (var take in takes[stage.Index]) all.Add(take.Count);
            all.Add(pinned + standing.Sum(s => s.Count));
            if (!all.IsConstant) plan.Model.Add(all.Expression <= problem.ItemOf(stage.Index).Count);
            if (before >= 0) AtEachLoading(stage, before, pinned, standing);
        }
    }

    private static int Pinned(Problem problem, DraftFiring firing, int stage) => !firing.IsPinned ? 0 : problem.Pins
        .Where(p => p.Kiln == firing.Kiln && p.Start == firing.Start).SelectMany(p => p.Contents).Where(c => c.Stage == stage)
        .Sum(c => c.Count);

    private int Pinned(DraftFiring firing, int stage) => Pinned(problem, firing, stage);

    private void AtEachLoading(Stage stage, int before, int pinned, List<(int Load, int Count)> standing)
    {
        var handling = problem.ItemOf(stage.Index).Handling;
        var arrivals = takes[before].Select(t => (Time: t.End + handling, t.Count)).ToList();
        var arrived = plan.Fixed.Select(f =>
            (Time: problem.Kilns[f.Kiln].EndOf(f.Start, f.Type) + handling, Count: PlanModel.CountOf(f, before)))
            .Where(f => f.Count > 0).ToList();
        var loads = takes[stage.Index].Select(t => t.Load).Concat(standing.Select(s => s.Load)).Distinct().Order().ToList();
        for (var l = 0; l < loads.Count; l++)
        {
            var (load, next) = (loads[l], l + 1 < loads.Count ? loads[l + 1] : int.MaxValue);
            // Where nothing arrives before the next loading, the next one says it all.
            if (pinned == 0 && l + 1 < loads.Count && !arrivals.Exists(a => a.Time > load && a.Time <= next)
                && !arrived.Exists(a => a.Time > load && a.Time <= next)) continue;
            var sum = new Sum();
            foreach (var take in takes[stage.Index].Where(t => t.Load <= load)) sum.Add(take.Count);
            foreach (var (time, count) in arrivals.Where(a => a.Time <= load)) sum.Add(count, -1);
            sum.Add(pinned + standing.Where(s => s.Load <= load).Sum(s => s.Count) - arrived.Where(a => a.Time <= load).Sum(a => a.Count));
            if (sum.IsConstant) continue;
            var bound = sum.Expression <= 0;
            if (pinned == 0 || standing.Exists(s => s.Load == load)) plan.Model.Add(bound);
            else
            {
                // What is kept for a pinned firing may never come; then nobody else may have any.
                foreach (var take in takes[stage.Index].Where(t => t.Load == load))
                    plan.Model.Add(bound).OnlyEnforceIf(plan.Mark(take.Count, problem.ItemOf(stage.Index).Count));
            }
        }
    }
}
