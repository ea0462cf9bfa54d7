namespace ConeService.Data;

/// <summary>
/// Cone ranges of bodies, coats and firings rise from lowest over best to highest, are whole or blank together, and stand
/// on the potter's scale 022 … 14, on which distances are counted.
/// </summary>
internal sealed class ConeRangeRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["cones", "clay-bodies", "glazes", "firing-kinds"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var order = content.ConeOrder();
        var cones = content.Rows(TypedTables.Cones).ToDictionary(c => c.Row.Id, c => c.Row, StringComparer.Ordinal);
        bool OnScale(string cone) => cones[cone] is { WholeStep: not null } or { Kind: "half", Position: > -22 and < 14 };
        var bodies = content.Rows(TypedTables.ClayBodies);
        return bodies.SelectMany(b => Rising(b, order, OnScale, ("bisque_cone_min", b.Row.BisqueConeMin),
            ("bisque_cone_max", b.Row.BisqueConeMax)))
            .Concat(bodies.SelectMany(b =>
                Rising(b, order, OnScale, ("mature_cone_min", b.Row.MatureConeMin), ("mature_cone_best", b.Row.MatureConeBest),
                ("mature_cone_max", b.Row.MatureConeMax))))
            .Concat(bodies.SelectMany(b =>
                Together(b, ("mature_cone_min", b.Row.MatureConeMin), ("mature_cone_best", b.Row.MatureConeBest),
                ("mature_cone_max", b.Row.MatureConeMax))))
            .Concat(content.Rows(TypedTables.Glazes)
                .SelectMany(g => Rising(g, order, OnScale, ("cone_min", g.Row.ConeMin), ("cone_best", g.Row.ConeBest),
                ("cone_max", g.Row.ConeMax))
                .Concat(Together(g, ("cone_best", g.Row.ConeBest), ("cone_max", g.Row.ConeMax)))))
            .Concat(content.Rows(TypedTables.FiringKinds)
                .SelectMany(k => Rising(k, order, OnScale, ("cone_min", k.Row.ConeMin), ("cone_max", k.Row.ConeMax))));
    }

    private static IEnumerable<PackageFault> Rising<T>(Located<T> at, Dictionary<string, int> order, Func<string, bool> onScale,
        params (string Field, string? Cone)[] range)
    {
        var present = range.Where(r => r.Cone is not null).Select(r => (r.Field, Cone: r.Cone!)).ToList();
        foreach (var (field, cone) in present.Where(r => !onScale(r.Cone)))
            yield return at.Fault(field, FaultRules.ConeRange,
                $"is '{cone}'; it must be one of the cones 022 to 14, on which distances are counted");
        foreach (var (lower, upper) in present.Zip(present.Skip(1)))
        {
            if (order[lower.Cone] > order[upper.Cone])
                yield return at.Fault(upper.Field, FaultRules.ConeRange,
                    $"is '{upper.Cone}', cooler than '{lower.Cone}' in {lower.Field}; a range rises: 022 … 01, 1 … 14");
        }
    }

    private static IEnumerable<PackageFault> Together<T>(Located<T> at, params (string Field, string? Cone)[] range)
    {
        if (range.All(r => r.Cone is null))
            yield break;
        foreach (var (field, _) in range.Where(r => r.Cone is null))
            yield return at.Fault(field, FaultRules.ConeRange,
                $"is blank; {string.Join(", ", range.Select(r => r.Field))} are given together or not at all");
    }
}
