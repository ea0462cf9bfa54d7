namespace ConeService.Data;

/// <summary>
/// Every row that names sources and a confidence, whatever its table: the rules on evidence
/// hold for tables that are added later without being told of them.
/// </summary>
internal static class CitedRows
{
    public const string Confidence = "confidence";

    public static IEnumerable<(Located<string> At, string[] Sources)> Of(PackageContent content)
    {
        foreach (var table in content.Tables.Values.Where(t => t.Sound))
        {
            var (source, confidence) = (table.Schema.IndexOf("source"), table.Schema.IndexOf(Confidence));
            if (source < 0 || confidence < 0)
                continue;
            foreach (var (part, row) in table.Rows)
            {
                if ((row.Values[source] as string[] ?? (row.Values[source] is string one ? [one] : null)) is { } sources
                    && row.Values[confidence] is string trusted)
                    yield return (new Located<string>(trusted, part.Package, part.Schema.Path, row.Line), sources);
            }
        }
    }
}
