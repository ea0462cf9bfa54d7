namespace ConeService.Data;

/// <summary>
/// A template has segments numbered from 1, and its cones hang together: range around the end cone, the end cone the hottest of
/// its segments.
/// </summary>
internal sealed class TemplateSegmentsRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["cones", "schedule-templates", "schedule-segments"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var place = content.ConeOrder();
        var segments = content.Rows(TypedTables.ScheduleSegments).ToLookup(s => s.Row.Schedule, StringComparer.Ordinal);
        foreach (var at in content.Rows(TypedTables.ScheduleTemplates))
        {
            var own = segments[at.Row.Id].ToList();
            if (own.Count == 0) yield return at.Fault("id", FaultRules.TemplateSegments,
                $"is '{at.Row.Id}', which has no segment in schedule-segments");
            foreach (var (segment, index) in own.Select((s, i) => (s, i)).Where(x => x.s.Row.Number != x.i + 1))
                yield return segment.Fault("number", FaultRules.TemplateSegments,
                    $"is {segment.Row.Number}; the segments of a template are numbered from 1 without a gap, so it must be {index + 1}");
            if (Objection(at.Row, [.. own.Select(s => s.Row.TargetCone).OfType<string>()], place) is { } reason)
                yield return at.Fault("end_cone", FaultRules.TemplateSegments, reason);
        }
    }

    private static string? Objection(ScheduleTemplateRow row, List<string> cones, Dictionary<string, int> place)
    {
        if (row.EndCone is not { } end)
            return cones.Count == 0 && row.ConeMin is null && row.ConeMax is null && row.RangeConfidence is null
                ? null
                : "is blank, but the template or a segment names a cone";
        if (row.ConeMin is not { } low || row.ConeMax is not { } high || row.RangeConfidence is null)
            return $"is '{end}'; cone_min, cone_max and range_confidence must be filled too";
        if (place[low] > place[end] || place[end] > place[high])
            return $"is '{end}', outside the range {low} to {high}";
        return cones.Count > 0 && cones.Max(c => place[c]) == place[end]
            ? null
            : $"is '{end}'; it must be the hottest cone of the segments";
    }
}
