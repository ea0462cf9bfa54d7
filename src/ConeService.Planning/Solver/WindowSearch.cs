using ConeService.Planning.Bounds;
using ConeService.Planning.Model;
using ConeService.Planning.Search;

namespace ConeService.Planning.Solver;

/// <summary>
/// Betters a plan window by window: the firings of some days are taken out, and the solver puts their pieces, and some of those left
/// undone, back in the best way it finds while all other firings stand.
/// </summary>
internal sealed class WindowSearch
{
    private const double LongestRun = 0.4;
    private const int LeastSize = 60;
    private readonly Problem problem;
    private readonly IReadOnlyList<Opening> openings;
    private readonly Random random;
    private int size = 200;

    /// <summary>Makes a search.</summary>
    public WindowSearch(Problem problem, IReadOnlyList<Opening> openings, int seed)
    {
        (this.problem, this.openings, random) = (problem, openings, new(seed));
    }

    /// <summary>Windows solved so far.</summary>
    public int Windows { get; private set; }

    /// <summary>Solves one window of a plan.</summary>
    /// <param name="from">The plan.</param>
    /// <param name="known">What no plan betters.</param>
    /// <param name="time">What may be spent.</param>
    public Draft Better(Draft from, PlanBounds known, SolverTime time)
    {
        Windows++;
        var plan = Openings.Normal(problem, openings, from);
        var (free, stages) = Choose(plan);
        if (free.Count == 0) return plan;
        var bookings = free.Select(o => (o.Booking.Kiln, o.Booking.Start)).ToHashSet();
        var standing = plan.Firings.Where(f => f.IsPinned || !bookings.Contains((f.Kiln, f.Start))).ToList();
        var open = free.Where(o => !standing.Exists(f => f.Kiln == o.Booking.Kiln && !f.IsPinned
            && problem.Kilns[f.Kiln].LoadAt(f.Start) < o.End && o.Load < problem.Kilns[f.Kiln].EndOf(f.Start, f.Type))).ToList();
        var model = new PlanModel(problem, open, standing, stages);
        var part = time.AtMost(LongestRun);
        var (before, seconds) = (part.Work, part.Seconds);
        var (best, _) = new LevelSolver(problem, model, random.Next(1, 1000)).Solve(plan, known, part, Windows % 4 == 0 ? 5 : 4);
        if (!double.IsInfinity(before)) time.Spend(Math.Max(0.001, before - part.Work));
        // As large as can be solved in its time.
        size = part.IsOver ? Math.Max(LeastSize, size * 4 / 5) : Math.Min(PlanSolver.MostWhole, (size * 11 / 10) + 1);
        return best;
    }

    private (List<Opening> Free, HashSet<int> Stages) Choose(Draft plan)
    {
        var kilns = Kilns();
        var near = openings.Where(o => kilns.Contains(o.Booking.Kiln)).ToList();
        if (near.Count == 0) return ([], []);
        var middle = near[random.Next(near.Count)].Load;
        var groups = near.GroupBy(o => (o.Booking.Kiln, o.Booking.Start)).OrderBy(g => Math.Abs(g.First().Load - middle))
            .ThenBy(g => g.Key.Kiln).ToList();
        var held = plan.Firings.Where(f => !f.IsPinned).ToDictionary(f => (f.Kiln, f.Start));
        var (free, stages, count) = (new List<Opening>(), Undone(plan), 0);
        foreach (var group in groups)
        {
            if (held.TryGetValue(group.Key, out var firing)) stages.UnionWith(firing.Contents.Select(c => c.Stage));
            free.AddRange(group);
            // Those before may take what came with this one; counted again now and then is near enough.
            count += group.Sum(o => 1 + o.Most.Count(m => stages.Contains(m.Stage)));
            if (count >= size) break;
        }

        return (free, stages);
    }

    private HashSet<int> Kilns()
    {
        var all = Enumerable.Range(0, problem.Kilns.Count).ToArray();
        random.Shuffle(all);
        return [.. all.Take(random.Next(3) == 0 ? all.Length : random.Next(1, all.Length + 1))];
    }

    // Some of what the plan leaves undone, and what would follow.
    private HashSet<int> Undone(Draft plan)
    {
        var placed = new int[problem.Stages.Count];
        foreach (var (stage, count) in plan.Firings.SelectMany(f => f.Contents)) placed[stage] += count;
        var left = problem.Stages.Where(s => placed[s.Index] < problem.Items[s.Item].Count).Select(s => s.Index).ToArray();
        random.Shuffle(left);
        return [.. left.Take(30)];
    }
}
