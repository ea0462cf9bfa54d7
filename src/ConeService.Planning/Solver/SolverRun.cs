using System.Globalization;
using Google.OrTools.Sat;

namespace ConeService.Planning.Solver;

/// <summary>One run of CP-SAT on one thread; two threads of one run have ended the process before.</summary>
internal sealed class SolverRun(CpModel model, SolverTime time, int seed, string more = "") : IDisposable
{
    private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(50);
    private readonly CpSolver solver = new();

    /// <summary>Solves it as far as the time goes.</summary>
    public CpSolverStatus Solve()
    {
        var limits = string.Create(
            CultureInfo.InvariantCulture,
            $"num_search_workers:1 linearization_level:2 random_seed:{seed} max_time_in_seconds:{Math.Clamp(time.Seconds, 0.01, 3600)}");
        if (!double.IsInfinity(time.Work)) limits += string.Create(CultureInfo.InvariantCulture,
            $" max_deterministic_time:{time.Work:0.######}");
        solver.StringParameters = $"{limits} {more}";
        // The flow of the caller goes with the timer, and with it who waits.
        using var watch = new Timer(_ => { if (time.Ends()) solver.StopSearch(); }, null, Often, Often);
        var status = solver.Solve(model);
        time.Spend(solver.Response!.DeterministicTime);
        return status;
    }

    /// <summary>What each variable is, by its index.</summary>
    public IReadOnlyList<long> Values => solver.Response!.Solution;

    /// <summary>What a variable is.</summary>
    public long Of(IntVar variable) => solver.Value(variable);

    /// <summary>What the objective is.</summary>
    public double Objective => solver.ObjectiveValue;

    /// <summary>What it can't be better than.</summary>
    public double Bound => solver.BestObjectiveBound;

    /// <summary>Hands the solution of this run to the next one.</summary>
    public void Hint()
    {
        var hint = new PartialVariableAssignment();
        for (var v = 0; v < Values.Count; v++)
        {
            hint.Vars.Add(v);
            hint.Values.Add(Values[v]);
        }

        model.Model.SolutionHint = hint;
    }

    /// <inheritdoc/>
    public void Dispose() => (solver as IDisposable)?.Dispose();
}
