namespace ConeService.Data;

/// <summary>
/// What was read of a source: the whole of a work can be seen only in the work or in pictures of its pages; what was seen has the
/// day, and what was not has none.
/// </summary>
internal sealed class SeenThroughRule : IPackageRule
{
    public IReadOnlyList<string> Reads => [TypedTables.Sources.Name];

    public IEnumerable<PackageFault> Check(PackageContent content) => !EvidencedRows.Judges(content)
        ? []
        : content.Rows(TypedTables.Sources).Where(s => s.Package == content.Packages[0].Name).SelectMany(Check);

    private static IEnumerable<PackageFault> Check(Located<SourceRow> at)
    {
        var (seen, via) = (at.Row.Seen, at.Row.Via);
        var isSeen = seen is "whole" or "in-part";
        if (via is null)
            yield return at.Fault("via", FaultRules.SeenThrough, "is blank; say what was really read");
        else if (isSeen == via is SourceVia.Memory or SourceVia.NotApplicable)
            yield return at.Fault("via", FaultRules.SeenThrough, $"is '{EnumWords.Word(via.Value)}' beside seen '{seen}'");
        else if (seen == "whole" && via is not (SourceVia.Work or SourceVia.Scan))
            yield return at.Fault("seen", FaultRules.SeenThrough,
                $"is 'whole', but only a {EnumWords.Word(via.Value)} was read; it must be in-part");
        if (via is SourceVia.Reproduction or SourceVia.Report && at.Row.SeenVia is null)
            yield return at.Fault("seen_via", FaultRules.SeenThrough, $"is blank; say which {EnumWords.Word(via.Value)} was read");
        if (isSeen != at.Row.Accessed is not null)
            yield return at.Fault("accessed", FaultRules.SeenThrough, isSeen ? "is blank beside a source that was seen"
                : "stands beside a source that was not seen");
    }
}
