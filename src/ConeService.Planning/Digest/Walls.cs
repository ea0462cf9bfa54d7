namespace ConeService.Planning.Digest;

/// <summary>
/// The walls of a backlog in few classes, each fired as its thickest: a firing of its own for every tenth of a millimetre would be slow to
/// plan and no better to fire.
/// </summary>
internal sealed class Walls
{
    /// <summary>The most classes; those nearest to each other in proportion go together first.</summary>
    public const int Most = 4;

    private readonly List<double> tops;

    /// <summary>Puts walls into classes.</summary>
    /// <param name="millimetres">The walls, mm, in any order.</param>
    public Walls(IEnumerable<double> millimetres)
    {
        tops = [.. millimetres.Distinct().Order()];
        while (tops.Count > Most) tops.RemoveAt(Enumerable.Range(0, tops.Count - 1).MinBy(i => tops[i + 1] / tops[i]));
    }

    /// <summary>The thickest of the class of a ware; the ware itself where nobody told of its walls.</summary>
    public SlowWare Class(SlowWare ware) =>
        ware.ThickestMillimetres is { } wall ? ware with { ThickestMillimetres = tops.Find(t => t >= wall) } : ware;
}
