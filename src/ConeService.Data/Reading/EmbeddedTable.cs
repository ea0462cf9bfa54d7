namespace ConeService.Data;

/// <summary>Reads one table of the embedded package by itself.</summary>
internal static class EmbeddedTable
{
    /// <summary>The rows; empty where something is wrong: that is said when the package is loaded, not here.</summary>
    public static IReadOnlyList<T> Read<T>(TypedTable<T> typed)
    {
        var faults = new List<PackageFault>();
        if (LoadedPackage.Read(new EmbeddedPackageFiles(), isOverlay: false, faults) is not { } package
            || package.Descriptor.Tables.FirstOrDefault(t => t.Name == typed.Name) is not { } schema)
        {
            return [];
        }

        var table = new MergedTable(schema);
        table.Parts.Add(CsvTableReader.Read(package, TableCompletion.OfBase(schema, typed, package.Descriptor.Minor), faults));
        CellChecks.Run(table.Parts[0]);
        return faults.Count == 0 ? [.. typed.Bind(table).Select(r => r.Row)] : [];
    }
}
