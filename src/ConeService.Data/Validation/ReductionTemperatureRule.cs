namespace ConeService.Data;

/// <summary>
/// Gas that does not burn in a kiln below dull red can explode: no template reduces below 760 °C (1400 °F, the floor of NFPA 86 as it is
/// recalled), and below 860 °C only where a source other than practice says so (cautions carbon-monoxide and explosive-reduction).
/// What is done after the draw is no firing.
/// </summary>
internal sealed class ReductionTemperatureRule : IPackageRule
{
    private const decimal Never = 760, Usual = 860, Room = 20;
    private static readonly string[] Practice = ["common-practice", "derived"];

    public IReadOnlyList<string> Reads => ["schedule-segments"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        // Two versions were shipped with templates and before this rule.
        if (SemVer.Minor(content.Packages[0].Descriptor.Version) is { Major: 1, Minor: 4 or 5 }) yield break;
        foreach (var template in content.Rows(TypedTables.ScheduleSegments).GroupBy(s => s.Row.Schedule, StringComparer.Ordinal))
        {
            var from = Room;
            foreach (var at in template)
            {
                var row = at.Row;
                var lowest = Math.Min(from, row.TargetCelsius ?? from);
                // What ends at a cone is far above either limit by then.
                from = row.TargetCelsius ?? Usual;
                if (row.Atmosphere != Atmosphere.Reduction || row.Stage == FiringStage.PostFiring || lowest >= Usual) continue;
                if (lowest < Never)
                    yield return at.Fault("atmosphere", FaultRules.ReductionTemperature,
                        $"is reduction from {lowest} °C; below {Never} °C unburnt gas can explode, so it must start at {Never} °C "
                        + "or above");
                else if (row.Sources.All(Practice.Contains))
                    yield return at.Fault("atmosphere", FaultRules.ReductionTemperature,
                        $"is reduction from {lowest} °C; from {Never} to {Usual} °C it needs a source other than practice");
            }
        }
    }
}
