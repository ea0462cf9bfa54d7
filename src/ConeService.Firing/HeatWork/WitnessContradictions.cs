using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork;

/// <summary>A witness cone with what it says of the offset of the meter.</summary>
/// <param name="Witness">The cone as it was seen.</param>
/// <param name="Evidence">What that says.</param>
internal readonly record struct SeenCone(Witness Witness, OffsetEvidence Evidence);

/// <summary>Witness cones that do not fit together.</summary>
internal static class WitnessContradictions
{
    // Standard deviations from the estimate beyond which a cone contradicts it.
    private const double Far = 2.5;

    // More than these say no more.
    private const int Most = 10;

    /// <summary>The contradictions in sentences, the first ten.</summary>
    /// <param name="seen">The cones.</param>
    /// <param name="best">The offset that they support together, K.</param>
    public static IReadOnlyList<Message> Find(IReadOnlyList<SeenCone> seen, double best)
    {
        var all = OutOfOrder(seen).Concat(Unequal(seen)).Concat(FarOff(seen, best)).ToList();
        return all.Count <= Most ? all : [.. all.Take(Most), Message.Of("heat-work.more-contradictions", ("count", all.Count - Most))];
    }

    // Each cone against the cooler one that moved least.
    private static IEnumerable<Message> OutOfOrder(IReadOnlyList<SeenCone> seen)
    {
        Witness? least = null;
        foreach (var same in seen.Select(s => s.Witness).GroupBy(w => w.Cone).OrderBy(g => g.Key))
        {
            var furthest = same.MaxBy(w => w.Leans.Least)!;
            if (least is not null && ConeBend.IsFurther(furthest.Leans.Least, least.Leans.Most))
                yield return Message.Of("heat-work.went-further", ("hot", furthest.Cone.ToString()), ("cold", least.Cone.ToString()));
            var slowest = same.MinBy(w => w.Leans.Most)!;
            if (least is null || slowest.Leans.Most < least.Leans.Most) least = slowest;
        }
    }

    private static IEnumerable<Message> Unequal(IReadOnlyList<SeenCone> seen) =>
        from same in seen.GroupBy(s => s.Witness.Cone)
        where ConeBend.IsFurther(same.Max(s => s.Witness.Leans.Least), same.Min(s => s.Witness.Leans.Most))
        let apart = same.Max(s => s.Evidence.Told) - same.Min(s => s.Evidence.Told)
        where apart > 2 * same.Max(s => s.Evidence.Sigma)
        select Message.Of("heat-work.looked-different", ("cone", same.Key.ToString()));

    private static IEnumerable<Message> FarOff(IReadOnlyList<SeenCone> seen, double best) =>
        from s in seen
        let sigmas = Math.Abs(s.Evidence.Residual(best))
        where sigmas > Far
        select Message.Of("heat-work.far-from-others", ("cone", s.Witness.Cone.ToString()), ("sigmas", sigmas));
}
