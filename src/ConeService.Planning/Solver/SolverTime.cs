using System.Diagnostics;
using ConeService.Firing;

namespace ConeService.Planning.Solver;

/// <summary>What is left of the time of a solver: seconds by the clock, work counted by the solver itself, or both.</summary>
internal sealed class SolverTime
{
    private readonly long begun = Stopwatch.GetTimestamp();
    private readonly double seconds;
    private readonly CancellationToken enough;
    private double work;

    /// <summary>Time and work that there are.</summary>
    /// <param name="seconds">Seconds from now; infinite: not counted.</param>
    /// <param name="work">Work, in the solver's own units, about a second each; infinite: not counted. With it alone the same question gets
    /// the same answer.</param>
    /// <param name="enough">Cancelled when nothing is left to better.</param>
    public SolverTime(double seconds, double work, CancellationToken enough = default)
    {
        (this.seconds, this.work, this.enough) = (seconds, work, enough);
    }

    /// <summary>Seconds left.</summary>
    public double Seconds => seconds - Stopwatch.GetElapsedTime(begun).TotalSeconds;

    /// <summary>Work left.</summary>
    public double Work => work;

    /// <summary>True when nothing is left of it.</summary>
    public bool IsOver => enough.IsCancellationRequested || Seconds <= 0.01 || work <= 0;

    /// <summary>A share of what is left, 1 for all of it.</summary>
    public SolverTime Share(double share) => new(Seconds * share, work * share, enough);

    /// <summary>No more than so much of it.</summary>
    public SolverTime AtMost(double most) =>
        new(Math.Min(Seconds, double.IsInfinity(seconds) ? Seconds : most), Math.Min(work, most), enough);

    /// <summary>Takes work off.</summary>
    public void Spend(double done) => work -= done;

    /// <summary>Whether a run shall end: nothing is left to better, or nobody waits.</summary>
    public bool Ends()
    {
        if (enough.IsCancellationRequested) return true;
        try
        {
            Patience.Check();
            return false;
        }
        catch (OperationCanceledException)
        {
            return true;
        }
    }
}
