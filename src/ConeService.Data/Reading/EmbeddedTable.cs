namespace ConeService.Data;

/// <summary>Reads one table of the embedded package by itself.</summary>
internal static class EmbeddedTable
{
    /// <summary>
    /// The rows; empty where the table can't be read. What is wrong with the package as a whole, its seal included, is said when it is
    /// loaded: the command that seals it anew must be able to speak.
    /// </summary>
    public static IReadOnlyList<T> Read<T>(TypedTable<T> typed)
    {
        if (LoadedPackage.Read(new EmbeddedPackageFiles(), isOverlay: false, []) is not { } package
            || package.Descriptor.Tables.FirstOrDefault(t => t.Name == typed.Name) is not { } schema)
        {
            return [];
        }

        var faults = new List<PackageFault>();
        var completion = TableCompletion.OfBase(schema, typed, package.Descriptor.Minor);
        var table = new MergedTable(completion.Schema);
        table.Parts.Add(CsvTableReader.Read(package, completion, faults));
        CellChecks.Run(table.Parts[0]);
        return faults.Count == 0 ? [.. typed.Bind(table).Select(r => r.Row)] : [];
    }
}
