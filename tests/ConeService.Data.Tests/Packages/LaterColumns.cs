namespace ConeService.Data.Tests;

/// <summary>Columns that came after 1.5: a package of that time, and an overlay, may do without.</summary>
internal static class LaterColumns
{
    private static readonly string[] OfSources = ["via", "seen_via", "accessed", "address", "doi", "isbn", "standard", "witness"];

    private static readonly string[] OfLimits = ["section", "effective_from", "superseded_by", "checked_on", "seen_via"];

    /// <summary>Whether a field of the reference package is one of them.</summary>
    public static bool Has(string table, string field) =>
        field.EndsWith("_rank", StringComparison.Ordinal) || field == "value_confidence" || table switch
        {
            "sources" => OfSources.Contains(field),
            "schedule-templates" => field is "usual" or "locator",
            "exposure-limits" => OfLimits.Contains(field) || field is "instrument" or "locator",
            "food-contact-limits" => OfLimits.Contains(field) || field == "locator",
            _ => field == "locator",
        };
}
