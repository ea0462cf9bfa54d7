namespace ConeService.Data;

/// <summary>Where a row is printed, and which of its values can be trusted further than the row as a whole.</summary>
/// <param name="Locator">Page, table, figure or section of the first source; null where the printed place is not known.</param>
/// <param name="Values">Confidence of single fields, by their names; a field not named has the confidence of the row.</param>
public sealed record RowEvidence(string? Locator, IReadOnlyDictionary<string, Confidence> Values)
{
    /// <summary>What separates the field from its confidence in an item of <c>value_confidence</c>.</summary>
    internal const char Separator = ':';

    /// <summary>Nothing beyond what the row says: the same object for nearly all rows.</summary>
    public static RowEvidence None { get; } = new(null, new Dictionary<string, Confidence>());

    /// <summary>Confidence of one field.</summary>
    /// <param name="field">Name of the field in the table.</param>
    /// <param name="row">The row's own word, which is the weakest of its values.</param>
    public Confidence Of(string field, Confidence row) => Values.TryGetValue(field, out var confidence) ? confidence : row;

    /// <summary>What two cells say.</summary>
    /// <param name="locator">The cell <c>locator</c>.</param>
    /// <param name="values">The items of <c>value_confidence</c>, which were judged before.</param>
    internal static RowEvidence Read(string? locator, IReadOnlyList<string> values)
    {
        if (locator is null && values.Count == 0)
            return None;
        var named = new Dictionary<string, Confidence>(values.Count, StringComparer.Ordinal);
        foreach (var item in values)
        {
            if (item.Split(Separator) is [var field, var word] && EnumWords.TryRead<Confidence>(word, out var confidence))
                named[field] = confidence;
        }

        return new(locator, named);
    }
}
