namespace ConeService.Planning.Model;

/// <summary>A plan in whole numbers.</summary>
/// <param name="Firings">The firings, by loading.</param>
/// <param name="Score">What it is worth.</param>
internal sealed record Draft(IReadOnlyList<DraftFiring> Firings, Score Score)
{
    /// <summary>Makes a plan of firings in any order.</summary>
    public static Draft Of(Problem problem, IEnumerable<DraftFiring> firings)
    {
        var sorted = firings.OrderBy(f => problem.Kilns[f.Kiln].LoadAt(f.Start)).ThenBy(f => f.Kiln).ToList();
        return new(sorted, Scorer.Of(problem, sorted));
    }
}

/// <summary>A firing of it.</summary>
/// <param name="Kiln">The kiln.</param>
/// <param name="Start">Place among its starts.</param>
/// <param name="Type">Place among its types.</param>
/// <param name="IsPinned">True for one that stands.</param>
/// <param name="Contents">What is in it, each stage once.</param>
internal sealed record DraftFiring(int Kiln, int Start, int Type, bool IsPinned, IReadOnlyList<StageCount> Contents);

/// <summary>What a plan is worth; less is better, the first first.</summary>
/// <param name="Late">Σ of late pieces × priority × (1,000 + days late).</param>
/// <param name="Undone">Firings that pieces do not get.</param>
/// <param name="Cost">Cost, in 1/100.</param>
/// <param name="Changes">Changes against the former plan.</param>
/// <param name="Waiting">Piece-hours between ready and done.</param>
/// <param name="ChangePrice">What must be saved for each change, in 1/100: who was told a plan must not hear of another for
/// pennies.</param>
internal readonly record struct Score(
    long Late, long Undone, long Cost, long Changes, long Waiting, long ChangePrice = 0) : IComparable<Score>
{
    /// <summary>Cost, with what changes must save.</summary>
    public long Weighed => Cost + (Changes * ChangePrice);

    /// <summary>Less than 0 where it is better.</summary>
    public int CompareTo(Score other) => (Late, Undone, Weighed, Changes, Waiting)
        .CompareTo((other.Late, other.Undone, other.Weighed, other.Changes, other.Waiting));

    public static bool operator <(Score one, Score other) => one.CompareTo(other) < 0;

    public static bool operator >(Score one, Score other) => one.CompareTo(other) > 0;

    public static bool operator <=(Score one, Score other) => one.CompareTo(other) <= 0;

    public static bool operator >=(Score one, Score other) => one.CompareTo(other) >= 0;
}
