using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>
/// A row whose note says that something in it is practice, or was recalled, claims no print as a whole: its word is the weakest of
/// its values, and what was printed stands in <c>value_confidence</c>.
/// </summary>
internal sealed partial class NoteEvidenceRule : IPackageRule
{
    public IReadOnlyList<string> Reads => [];

    public IEnumerable<PackageFault> Check(PackageContent content) =>
        from row in EvidencedRows.Of(content)
        where row.ClaimsPrint && row.Cell("note") is { } note && Weaker().IsMatch(note)
        select row.Fault(CitedRows.Confidence, FaultRules.NoteEvidence,
            $"is '{EnumWords.Word(row.Confidence)}', but the note says '{Weaker().Match(row.Cell("note")!).Value}'; take the weakest word "
            + "of the values, and name those that were printed in value_confidence");

    [GeneratedRegex(@"\b(practice|recalled|recollected|recollection|memory)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Weaker();
}
