namespace ConeService.Data;

/// <summary>
/// A percentage says how far it can be trusted apart from its colour; it is published only where a source
/// that was seen can have printed it.
/// </summary>
internal sealed class PercentEvidenceRule : IPackageRule
{
    private const string Field = "percent_confidence";

    public IReadOnlyList<string> Reads => ["sources", "colour-notes", "colour-rule-ingredients"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var printed = content.Rows(TypedTables.Sources).Where(s => s.Row.Seen is "whole" or "in-part").Select(s => s.Row.Id)
            .ToHashSet(StringComparer.Ordinal);
        return content.Rows(TypedTables.ColourNotes)
            .Select(at => Check(at, at.Row.PercentMin ?? at.Row.PercentMax, at.Row.PercentConfidence, at.Row.Sources, printed))
            .Concat(content.Rows(TypedTables.ColourRuleIngredients)
                .Select(at => Check(at, at.Row.PercentMin ?? at.Row.PercentMax, at.Row.PercentConfidence, at.Row.Sources, printed)))
            .OfType<PackageFault>();
    }

    private static PackageFault? Check<T>(Located<T> at, decimal? percent, Confidence? trusted, IReadOnlyList<string> sources,
        HashSet<string> printed)
    {
        if (percent is null != trusted is null)
            return at.Fault(Field, FaultRules.PercentEvidence,
                percent is null ? "stands beside no percentage" : "is blank beside a percentage");
        return trusted is Confidence.Published or Confidence.Corroborated && !sources.Any(printed.Contains)
            ? at.Fault(Field, FaultRules.PercentEvidence,
                $"is '{EnumWords.Word(trusted.Value)}', but {string.Join(", ", sources)} was not seen")
            : null;
    }
}
