using ConeService.Planning.Bounds;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Model;
using ConeService.Planning.Search;

namespace ConeService.Planning.Solver;

/// <summary>Betters plans by CP-SAT: the whole question where it is small, windows of the calendar otherwise.</summary>
internal sealed class PlanSolver
{
    /// <summary>Openings and what may be in them, together, up to which a question is solved whole.</summary>
    public const int MostWhole = 1400;

    /// <summary>The same up to which windows of it are solved: beyond it a window holds too little of the question.</summary>
    private const int MostInWindows = 20_000;

    private readonly Problem problem;
    private readonly IReadOnlyList<Opening> openings;
    private readonly int seed;

    /// <summary>Makes a solver.</summary>
    public PlanSolver(Problem problem, int seed)
    {
        (this.problem, this.seed) = (problem, seed);
        IsCountable = Openings.AreFew(problem);
        openings = IsCountable ? Openings.Of(problem) : [];
    }

    /// <summary>Whether all that could be fired is listed, without which a solver knows nothing of the question.</summary>
    public bool IsCountable { get; }

    /// <summary>Whether the question is small enough to be solved whole.</summary>
    public bool IsSmall => IsCountable && openings.Sum(o => 1 + o.Most.Count) <= MostWhole;

    /// <summary>Whether windows of the question are worth solving.</summary>
    public bool IsWithinReach => IsCountable && openings.Sum(o => 1 + o.Most.Count) <= MostInWindows;

    /// <summary>Solves the whole question as far as the time goes.</summary>
    public (Draft Best, PlanBounds Bounds) Whole(Draft from, PlanBounds known, SolverTime time)
    {
        var start = Twins.Order(problem, Openings.Normal(problem, openings, from));
        var plan = new PlanModel(problem, openings, [.. start.Firings.Where(f => f.IsPinned).Select(Bare)]);
        Twins.Add(problem, plan);
        var (best, bounds) = new LevelSolver(problem, plan, seed).Solve(start, known, time);
        return (FirstPlanner.Better(from, best), bounds);
    }

    /// <summary>A search that betters plans window by window.</summary>
    public WindowSearch Windows() => new(problem, openings, seed);

    /// <summary>What plans that are late and undone no more than one cost at least, as far as the time goes.</summary>
    public PlanBounds Count(Draft plan, PlanBounds known, SolverTime time) => new CountingBound(problem, openings, seed)
        .Of(plan.Score, known, time);

    private DraftFiring Bare(DraftFiring pinned) => pinned with
    {
        Contents = problem.Pins.First(p => p.Kiln == pinned.Kiln && p.Start == pinned.Start).Contents,
    };
}
