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

    /// <summary>The contradictions in sentences.</summary>
    /// <param name="seen">The cones.</param>
    /// <param name="best">The offset that they support together, K.</param>
    public static IReadOnlyList<Message> Find(IReadOnlyList<SeenCone> seen, double best) =>
        [.. OutOfOrder(seen), .. Unequal(seen), .. FarOff(seen, best)];

    private static IEnumerable<Message> OutOfOrder(IReadOnlyList<SeenCone> seen) =>
        from hot in seen.Select(s => s.Witness)
        from cold in seen.Select(s => s.Witness)
        where hot.Cone > cold.Cone && Lean(hot) > Lean(cold)
        select Message.Of("heat-work.went-further", ("hot", hot.Cone.ToString()), ("cold", cold.Cone.ToString()));

    private static IEnumerable<Message> Unequal(IReadOnlyList<SeenCone> seen) =>
        from same in seen.GroupBy(s => s.Witness.Cone)
        where same.Select(s => Lean(s.Witness)).Distinct().Count() > 1
        let apart = same.Max(s => s.Evidence.Celsius) - same.Min(s => s.Evidence.Celsius)
        where apart > 2 * same.Max(s => s.Evidence.Sigma)
        select Message.Of("heat-work.looked-different", ("cone", same.Key.ToString()));

    private static IEnumerable<Message> FarOff(IReadOnlyList<SeenCone> seen, double best) =>
        from s in seen
        let sigmas = Math.Abs(s.Evidence.Residual(best))
        where sigmas > Far
        select Message.Of("heat-work.far-from-others", ("cone", s.Witness.Cone.ToString()), ("sigmas", sigmas));

    private static double Lean(Witness witness) => witness.Degrees ?? (witness.Look == "down" ? 90 : 0);
}
