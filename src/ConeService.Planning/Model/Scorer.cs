namespace ConeService.Planning.Model;

/// <summary>Says what firings are worth.</summary>
internal static class Scorer
{
    /// <summary>What a firing moved, made or given up counts against a piece moved.</summary>
    public const int FiringMoved = 10;

    /// <summary>The score of firings.</summary>
    public static Score Of(Problem problem, IReadOnlyList<DraftFiring> firings)
    {
        long late = 0, undone = 0, cost = 0, waiting = 0;
        var placed = new int[problem.Stages.Count];
        foreach (var firing in firings)
        {
            var kiln = problem.Kilns[firing.Kiln];
            var end = kiln.EndOf(firing.Start, firing.Type);
            cost += kiln.Types[firing.Type].Cost;
            foreach (var (stage, count) in firing.Contents)
            {
                placed[stage] += count;
                if (!problem.Stages[stage].IsLast) continue;
                var item = problem.ItemOf(stage);
                late += count * Problem.Lateness(item, end);
                waiting += (long)count * Hours(end - Math.Max(0, item.Ready));
            }
        }

        foreach (var stage in problem.Stages)
        {
            var item = problem.Items[stage.Item];
            var left = item.Count - placed[stage.Index];
            undone += left;
            if (!stage.IsLast) continue;
            late += left * item.UndoneLateness;
            waiting += (long)left * Hours(problem.Horizon - Math.Max(0, item.Ready));
        }

        return new(late, undone, cost, Changes(problem, firings), waiting, problem.ChangePrice);
    }

    /// <summary>How many pieces are late in a plan.</summary>
    public static int LatePieces(Problem problem, IReadOnlyList<DraftFiring> firings)
    {
        var late = problem.Items.Where(i => i.UndoneLateness > 0).Sum(i => i.Count);
        foreach (var firing in firings)
        {
            var end = problem.Kilns[firing.Kiln].EndOf(firing.Start, firing.Type);
            foreach (var (stage, count) in firing.Contents)
            {
                var item = problem.ItemOf(stage);
                if (problem.Stages[stage].IsLast && item.UndoneLateness > 0 && Problem.Lateness(item, end) == 0) late -= count;
            }
        }

        return late;
    }

    /// <summary>Whole hours of a time, none below 0.</summary>
    public static int Hours(int minutes) => Math.Max(0, minutes) / 60;

    // Pieces count where they stay away from a firing that they were announced for: who was told so must be told anew.
    private static long Changes(Problem problem, IReadOnlyList<DraftFiring> firings)
    {
        if (problem.Announced.Count == 0) return 0;
        long changes = 0;
        var left = firings.Where(f => !f.IsPinned).ToList();
        foreach (var told in problem.Announced)
        {
            var at = left.FindIndex(f =>
                f.Kiln == told.Kiln && f.Start == told.Start && problem.Kilns[f.Kiln].Types[f.Type].Menu == told.Menu);
            if (at < 0)
            {
                changes += FiringMoved + told.Contents.Sum(c => c.Count);
                continue;
            }

            foreach (var (stage, count) in told.Contents)
            {
                var now = 0;
                foreach (var held in left[at].Contents)
                {
                    if (held.Stage == stage) now = held.Count;
                }

                changes += Math.Max(0, count - now);
            }

            left.RemoveAt(at);
        }

        return changes + (FiringMoved * left.Count);
    }
}
