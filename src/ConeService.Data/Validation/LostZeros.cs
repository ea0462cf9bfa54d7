using System.Globalization;

namespace ConeService.Data;

/// <summary>
/// Finds the tables of overlays from whose cones a program seems to have taken the leading zeros: a spreadsheet makes a number of
/// 06. Such a table is valid, for a studio may fire nothing but cone 6; so it is a warning. Ranks beside the cones say which was
/// meant, and then there is nothing to warn of.
/// </summary>
internal static class LostZeros
{
    private const int MostLines = 20;

    public static IEnumerable<PackageFault> Of(PackageContent content)
    {
        var cones = content.Rows(TypedTables.Cones).Select(c => c.Row.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var overlay in content.Packages.Where(p => p.IsOverlay))
        {
            foreach (var file in overlay.Descriptor.Tables)
            {
                if (TypedTables.Find(file.Name) is { } typed
                    && Check(overlay, file, typed, content.Tables[file.Name], cones) is { } warning)
                    yield return warning;
            }
        }
    }

    private static PackageFault? Check(
        LoadedPackage overlay, TableSchema file, TypedTable typed, MergedTable table, HashSet<string> cones)
    {
        var columns = typed.Columns.Where(c => c is { RefersTo: "cones", Type: FieldType.String }).Select(c => c.Name)
            .Where(c => file.IndexOf(Column.RankOf(c)) < 0).ToList();
        var places = table.Schema.IndexesOf(columns);
        var cells = table.Rows.Where(r => r.Part.Package == overlay.Name)
            .SelectMany(r => places.Select(p => (r.Row.Line, Cone: r.Row.Cells[p]))).ToList();
        // One zero left shows that nothing took them away.
        if (cells.Exists(c => c.Cone.StartsWith('0')))
            return null;
        var suspect = cells.Where(c => cones.Contains("0" + c.Cone)).ToList();
        if (suspect.Count == 0)
            return null;
        var lines = suspect.Select(c => c.Line).Distinct().ToList();
        var named = string.Join(", ", lines.Take(MostLines).Select(l => l.ToString(CultureInfo.InvariantCulture)));
        var more = lines.Count > MostLines
            ? string.Create(CultureInfo.InvariantCulture, $" and {lines.Count - MostLines} more") : "";
        return new(overlay.Name, file.Path, null, string.Join(", ", columns), PackageWarnings.LostZeros, string.Create(
            CultureInfo.InvariantCulture,
            $"no cone has a leading zero, and those of the lines {named}{more} would be other cones with one, such as "
            + $"0{suspect[0].Cone} for {suspect[0].Cone}. A spreadsheet that opens the file as it is takes the zeros away. Write 06 for "
            + $"cone 06; where all is right, add {Column.RankOf(columns[0])} and its like beside the cones, negative for a cone with a "
            + $"leading zero"));
    }
}
