using ConeService.Firing;
using ConeService.Planning.Model;
using ConeService.Planning.Search;

namespace ConeService.Planning.Bounds;

/// <summary>
/// Bounds without a solver: each piece alone in the studio (late, undone), and the room that all pieces take together (cost).
/// </summary>
internal static class AloneBounds
{
    /// <summary>The bounds.</summary>
    public static PlanBounds Of(Problem problem)
    {
        long late = 0;
        var undone = 0;
        var left = Enumerable.Repeat(0, problem.Stages.Count).ToArray();
        // What pins hold, and what follows in the chains of it, is theirs: nothing is claimed of it.
        var pinned = problem.Pins.SelectMany(p => p.Contents).Select(c => problem.Stages[c.Stage].Item).ToHashSet();
        Patience.Check();
        // Of the first stage and of the moment it is there: when it is unloaded at the earliest.
        Func<int, int, int> earliest = Openings.AreFew(problem) ? new Chances(problem).Earliest : new EarliestUnloading(problem).Of;
        foreach (var item in problem.Items)
        {
            if (pinned.Contains(item.Index)) continue;
            var (done, end) = Alone(earliest, item);
            undone += item.Count * (item.StageCount - done);
            late += item.Count * (done < item.StageCount
                ? item.UndoneLateness
                : Math.Min(item.UndoneLateness, Problem.Lateness(item, end)));
            for (var n = 0; n < done; n++) left[item.FirstStage + n] = item.Count;
        }

        return new(late, undone, Cost(problem, left), CostUndone: undone);
    }

    // How many firings a piece gets that has the studio to itself, and when it comes out of the last.
    private static (int Done, int End) Alone(Func<int, int, int> earliest, Item item)
    {
        var (ready, end) = (item.Ready, 0);
        for (var n = 0; n < item.StageCount; n++)
        {
            var at = earliest(item.FirstStage + n, ready);
            if (at == int.MaxValue) return (n, end);
            (end, ready) = (at, at + item.Handling);
        }

        return (item.StageCount, end);
    }

    // A kiln holds no more than its height and its layers: a piece costs its share of the cheapest firing for it. Pinned firings are paid
    // for; where one may be filled up, what goes in is free.
    private static long Cost(Problem problem, int[] left)
    {
        var pins = problem.Pins.Sum(p => problem.Kilns[p.Kiln].Types[p.Type].Cost);
        if (problem.Pins.Any(p => !p.Closed)) return pins;
        var whole = 0.0;
        for (var stage = 0; stage < left.Length; stage++)
        {
            if (left[stage] == 0) continue;
            var least = double.PositiveInfinity;
            foreach (var kiln in problem.Kilns)
            {
                var slot = kiln.Slots[stage];
                if (slot.Share == 0) continue;
                var fill = Math.Max(
                    slot.Share * (double)(slot.Height + kiln.Room.Shelf) / (kiln.Room.Height * (double)Problem.Whole),
                    slot.Share / (kiln.Room.Layers * (double)Problem.Whole));
                foreach (var type in kiln.Types.Where(t => t.Takes[stage])) least = Math.Min(least, fill * type.Cost);
            }

            if (!double.IsInfinity(least)) whole += left[stage] * least;
        }

        // No cheaper than the cheapest number of firings that makes it up.
        return pins + Math.Max((long)Math.Ceiling(whole - 1e-6), left.Any(l => l > 0) ? Cheapest(problem, left) : 0);
    }

    // Every sort of firing that something needs is fired at least once.
    private static long Cheapest(Problem problem, int[] left)
    {
        long most = 0;
        for (var stage = 0; stage < left.Length; stage++)
        {
            if (left[stage] == 0) continue;
            var least = problem.Kilns.SelectMany(k => k.Types).Where(t => t.Takes[stage]).Select(t => t.Cost).DefaultIfEmpty().Min();
            most = Math.Max(most, least);
        }

        return most;
    }
}
