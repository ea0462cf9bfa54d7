using System.Diagnostics;
using ConeService.Planning.Bounds;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Model;
using ConeService.Planning.Search;
using ConeService.Planning.Solver;

namespace ConeService.Planning;

/// <summary>
/// One question searched for a time: a first plan, then search on one thread and the solver on another, or one after the other with one
/// worker. With seconds left out only steps and the solver's own work are counted.
/// </summary>
internal sealed class Effort(Problem problem, PlanEffort effort, long begun) : IDisposable
{
    // What-if takes its time too, and writing the answer, and having the load check judge it.
    private const double ShareOfSearch = 0.8;

    // How much work of the solver goes with a step of search where steps alone are counted.
    private const double WorkOfStep = 0.004;

    private readonly Lock gate = new();
    private readonly CancellationTokenSource enough = new();
    private Draft best = new([], default);
    private PlanBounds bounds = new(0, 0, 0);
    private long steps;

    /// <summary>Searches.</summary>
    public async Task<Searched> SearchAsync()
    {
        best = FirstPlanner.Of(problem, () => IsOver);
        bounds = AloneBounds.Of(problem);
        var solver = effort.Solver && NativeSolver.IsThere;
        if (!bounds.Reached(best.Score))
        {
            if (effort.Workers == 1)
            {
                Search(0, solver ? 0.4 : 1);
                if (solver) Solve();
            }
            else
            {
                var searches = Enumerable.Range(0, solver ? Math.Max(1, effort.Workers - 1) : effort.Workers)
                    .Select(w => Task.Run(() => Search(w, 1)));
                await Task.WhenAll(solver ? searches.Append(Task.Run(Solve)) : searches);
            }
        }

        Firing.Patience.Check();
        return new(best, bounds, steps, effort.Solver && !solver);
    }

    /// <inheritdoc/>
    public void Dispose() => enough.Dispose();

    private double SecondsLeft => effort.Seconds > 0
        ? (effort.Seconds * ShareOfSearch) - Stopwatch.GetElapsedTime(begun).TotalSeconds
        : double.PositiveInfinity;

    private bool IsOver => enough.IsCancellationRequested || SecondsLeft <= 0;

    // Keeps the better one; where it can't be bettered all ends.
    private Draft Take(Draft found, PlanBounds? known = null)
    {
        lock (gate)
        {
            best = FirstPlanner.Better(best, found);
            if (known is not null) bounds = known;
            if (bounds.Reached(best.Score)) enough.Cancel();
            return best;
        }
    }

    private void Search(int worker, double share)
    {
        var search = new CalendarSearch(problem, effort.Seed + worker);
        var most = effort.Steps > 0 ? effort.Steps : search.WorthTrying;
        var time = effort.Seconds > 0 ? SecondsLeft * share : double.PositiveInfinity;
        var from = Stopwatch.GetTimestamp();
        var found = search.Search(best, Gone, plan => bounds.Reached(Take(plan).Score), effort.Seconds > 0 ? Best : null);
        Interlocked.Add(ref steps, search.Steps);
        Take(found);

        double Gone(long done) => enough.IsCancellationRequested ? 1 : Math.Max(
            done / (double)most, double.IsInfinity(time) ? 0 : Stopwatch.GetElapsedTime(from).TotalSeconds / Math.Max(0.001, time));
    }

    private void Solve()
    {
        var solver = new PlanSolver(problem, effort.Seed);
        var work = effort.Seconds > 0 ? double.PositiveInfinity : (effort.Steps > 0 ? effort.Steps : 1000) * WorkOfStep;
        var time = new SolverTime(SecondsLeft, work, enough.Token);
        if (solver.IsSmall)
        {
            // What is not proven at first is tried once more with what is left.
            for (var tries = 0; tries < 2; tries++)
            {
                if (time.IsOver) return;
                var part = time.Share(1);
                var before = part.Work;
                var (found, known) = solver.Whole(Best(), bounds, part);
                if (!double.IsInfinity(before)) time.Spend(before - part.Work);
                Take(found, known);
            }

            return;
        }

        if (!solver.IsWithinReach)
        {
            // Too large for windows to pay: what is counted is taken, and search goes on with a seed of its own.
            if (solver.IsCountable) Count(solver, time, 0.3);
            Search(effort.Workers, 1);
            return;
        }

        var windows = solver.Windows();
        Better(windows, time.Share(0.25), time);
        Count(solver, time, 0.55);
        Better(windows, time.Share(0.6), time);
        // Where the plan has become better in late or undone, what was counted for the one before holds for others.
        if (bounds.CostLate != Best().Score.Late || bounds.CostUndone != Best().Score.Undone) Count(solver, time, 0.8);
        Better(windows, time, time);
    }

    private void Count(PlanSolver solver, SolverTime time, double share)
    {
        if (time.IsOver) return;
        var part = time.Share(share);
        var before = part.Work;
        var counted = solver.Count(Best(), bounds, part);
        if (!double.IsInfinity(before)) time.Spend(before - part.Work);
        Take(Best(), counted);
    }

    private void Better(WindowSearch windows, SolverTime part, SolverTime whole)
    {
        while (!part.IsOver)
        {
            Firing.Patience.Check();
            var before = part.Work;
            Take(windows.Better(Best(), bounds, part));
            if (!ReferenceEquals(part, whole) && !double.IsInfinity(before)) whole.Spend(before - part.Work);
        }
    }

    private Draft Best()
    {
        lock (gate) return best;
    }
}

/// <summary>What was found.</summary>
/// <param name="Plan">The best plan.</param>
/// <param name="Bounds">What no plan betters.</param>
/// <param name="Steps">Calendars tried.</param>
/// <param name="SolverMissing">True where the solver was asked for and can't be loaded.</param>
internal sealed record Searched(Draft Plan, PlanBounds Bounds, long Steps, bool SolverMissing = false);
