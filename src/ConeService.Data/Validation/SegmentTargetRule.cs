namespace ConeService.Data;

/// <summary>
/// A segment goes to a temperature or to a cone, never both; what it says was published must be said where its source states
/// figures, and only there.
/// </summary>
internal sealed class SegmentTargetRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["schedule-segments"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        foreach (var at in content.Rows(TypedTables.ScheduleSegments))
        {
            var row = at.Row;
            if (row.TargetCelsius is null == row.TargetCone is null)
                yield return at.Fault("target_celsius", FaultRules.SegmentTarget,
                    "and target_cone must not both be blank or both be filled; a segment has one target");
            if (row.TargetBelowCelsius is not null && row.TargetCone is null)
                yield return at.Fault("target_below_celsius", FaultRules.SegmentTarget,
                    "needs a target_cone: it is counted from that cone's peak");
            if (row.PublishedFields.Count > 0 != row.Confidence is Confidence.Published or Confidence.Corroborated)
                yield return at.Fault("published_fields", FaultRules.SegmentTarget,
                    "names figures that the source states; it must be filled where the confidence is published or corroborated, and only "
                    + "there");
        }
    }
}
