namespace ConeService.Data;

/// <summary>
/// Confidence per value: an item of <c>value_confidence</c> names a field of the row that is filled and a stronger word than the
/// row's, and no <c>…_confidence</c> beside it is weaker than the row's, so that the row's own word is the weakest.
/// </summary>
internal sealed class ValueConfidenceRule : IPackageRule
{
    private const string Values = "value_confidence";

    public IReadOnlyList<string> Reads => [TypedTables.Sources.Name];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var seen = content.Rows(TypedTables.Sources).Where(s => s.Row.Seen is "whole" or "in-part").Select(s => s.Row.Id)
            .ToHashSet(StringComparer.Ordinal);
        return EvidencedRows.Of(content).SelectMany(row => Items(row, seen).Concat(Columns(row)));
    }

    private static IEnumerable<PackageFault> Items(EvidencedRow row, HashSet<string> seen)
    {
        if (row.Cell(Values) is null)
            yield break;
        foreach (var item in (string[])row.Row.Values[row.Table.Schema.IndexOf(Values)]!)
        {
            if (item.Split(RowEvidence.Separator) is not [var field, var word] || !EnumWords.TryRead<Confidence>(word, out var confidence))
                yield return Fault(row, $"has '{item}'; each item must be field{RowEvidence.Separator}confidence");
            else if (row.Cell(field) is null)
                yield return Fault(row, $"names {field}, which the row has not, or leaves blank");
            else if (ConfidenceWeakness.Of(confidence) >= ConfidenceWeakness.Of(row.Confidence))
                yield return Fault(row, $"says '{word}' of {field}, no better than the row's '{EnumWords.Word(row.Confidence)}'");
            else if (EvidencedRows.ClaimsPrint(confidence) && !row.Sources.Any(seen.Contains))
                yield return Fault(row, $"says '{word}' of {field}, but {string.Join(", ", row.Sources)} was not seen");
        }
    }

    private static IEnumerable<PackageFault> Columns(EvidencedRow row) =>
        from field in row.Table.Schema.Fields
        where field.Name.EndsWith("_confidence", StringComparison.Ordinal) && field.Name != Values
        let word = row.Cell(field.Name)
        where EnumWords.TryRead<Confidence>(word, out var confidence)
            && ConfidenceWeakness.Of(confidence) > ConfidenceWeakness.Of(row.Confidence)
        select row.Fault(CitedRows.Confidence, FaultRules.ValueConfidence,
            $"is '{EnumWords.Word(row.Confidence)}' beside {field.Name} '{word}'; the word of a row is the weakest of its values");

    private static PackageFault Fault(EvidencedRow row, string reason) => row.Fault(Values, FaultRules.ValueConfidence, reason);
}
