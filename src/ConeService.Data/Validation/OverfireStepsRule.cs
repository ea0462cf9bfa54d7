namespace ConeService.Data;

/// <summary>
/// A body warps before it bloats, bloats before it slumps and slumps before it melts; without a best cone there is nothing to
/// count from.
/// </summary>
internal sealed class OverfireStepsRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["cones", "clay-bodies"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        foreach (var at in content.Rows(TypedTables.ClayBodies))
        {
            var body = at.Row;
            var steps = new (string Field, decimal? Cones)[]
            {
                ("warp_cones_over_best", body.WarpConesOverBest), ("bloat_cones_over_best", body.BloatConesOverBest),
                ("slump_cones_over_best", body.SlumpConesOverBest), ("melt_cones_over_best", body.MeltConesOverBest),
            }.Where(s => s.Cones is not null).ToList();
            if (body.MatureConeBest is null && steps.Count > 0)
                yield return at.Fault(steps[0].Field, FaultRules.OverfireSteps,
                    $"is {steps[0].Cones}, but the body has no best cone to count from");
            foreach (var (sooner, later) in steps.Zip(steps.Skip(1)))
            {
                if (sooner.Cones > later.Cones)
                    yield return at.Fault(later.Field, FaultRules.OverfireSteps,
                        $"is {later.Cones}, less than {sooner.Field}, {sooner.Cones}; a body warps, bloats, slumps and melts in this "
                        + $"order");
            }
        }
    }
}
