using System.Globalization;
using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>
/// No source prints what came after it: of a row that claims a print, the year of the limit and the years that figures, statement and note
/// name lie no later than the newest edition among its sources. Sources without a year decide nothing.
/// </summary>
internal sealed partial class CitedYearRule : IPackageRule
{
    private static readonly string[] Dated = ["year", "figures", "statement", "note"];

    public IReadOnlyList<string> Reads => [TypedTables.Sources.Name];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var editions = content.Rows(TypedTables.Sources).ToDictionary(s => s.Row.Id, s => Years(s.Row.Year), StringComparer.Ordinal);
        foreach (var row in EvidencedRows.Of(content).Where(r => r.ClaimsPrint))
        {
            var printed = row.Sources.Select(s => editions.GetValueOrDefault(s, [])).ToList();
            if (printed.Count == 0 || printed.Any(years => years.Count == 0))
                continue;
            var newest = printed.SelectMany(years => years).Max();
            foreach (var field in Dated)
            {
                if (Years(row.Cell(field)) is { Count: > 0 } told && told.Max() > newest)
                    yield return row.Fault(field, FaultRules.CitedYear, string.Create(CultureInfo.InvariantCulture,
                        $"names {told.Max()}, but the newest of {string.Join(", ", row.Sources)} is of {newest}; cite what prints it, or "
                        + $"say that it was recalled"));
            }
        }
    }

    private static List<int> Years(string? text) => text is null ? [] :
        [.. Year().Matches(text).Select(m => int.Parse(m.Value, CultureInfo.InvariantCulture))];

    // A year stands alone: 29 CFR 1910.1000, 2000 °C and 1926-1930 mm are none.
    [GeneratedRegex(@"(?<![\d.,/-])(19|20)\d\d(?![\d.,]*\d)(?!\s*(°|mm|mL|kJ|K\b|[CF]\b))", RegexOptions.CultureInvariant)]
    private static partial Regex Year();
}
