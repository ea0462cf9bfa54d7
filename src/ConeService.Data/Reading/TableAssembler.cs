namespace ConeService.Data;

/// <summary>Reads the tables of the base package and lays those of the overlays beside them.</summary>
internal static class TableAssembler
{
    public static Dictionary<string, MergedTable> Assemble(
        LoadedPackage basePackage, IReadOnlyList<LoadedPackage> overlays, List<PackageFault> faults)
    {
        var tables = new Dictionary<string, MergedTable>(StringComparer.Ordinal);
        foreach (var schema in basePackage.Descriptor.Tables)
        {
            var completion = TableCompletion.OfBase(schema, TypedTables.Find(schema.Name), basePackage.Descriptor.Minor);
            var table = tables[schema.Name] = new MergedTable(completion.Schema);
            table.Parts.Add(CsvTableReader.Read(basePackage, completion, faults));
        }

        foreach (var typed in TypedTables.All.Where(t => t.MayBeAbsent(basePackage.Descriptor.Minor)))
            tables.TryAdd(typed.Name, new MergedTable(typed.AbsentSchema()));

        foreach (var overlay in overlays)
        {
            foreach (var schema in overlay.Descriptor.Tables)
            {
                if (OverlayPart(overlay, schema, tables, faults) is { } part)
                    tables[schema.Name].Parts.Add(part);
            }
        }

        return tables;
    }

    private static TableData? OverlayPart(
        LoadedPackage overlay, TableSchema schema, Dictionary<string, MergedTable> tables, List<PackageFault> faults)
    {
        void Fault(string rule, string reason) =>
            faults.Add(new PackageFault(overlay.Name, PackageDescriptor.FileName, null, schema.Name, rule, reason));

        if (!tables.TryGetValue(schema.Name, out var table) || !table.Schema.Overlay)
        {
            var open = tables.Values.Where(t => t.Schema.Overlay).Select(t => t.Schema.Name);
            Fault(FaultRules.OverlayTable, $"is not open to overlays; these are: {string.Join(", ", open)}");
            return null;
        }

        if (TableCompletion.OfOverlay(schema, table.Schema, TypedTables.Find(schema.Name)) is not { } completion)
        {
            Fault(
                FaultRules.OverlayFields,
                $"has the fields {Names(schema)}; it must have those of the base package, types included: {Names(table.Schema)}");
            var unread = new TableData(overlay.Name, table.Schema, faults);
            unread.DistrustRows();
            return unread;
        }

        // Constraints, keys and order are those of the base package: an overlay cannot loosen them.
        return CsvTableReader.Read(overlay, completion, faults);
    }

    private static string Names(TableSchema schema) =>
        string.Join(", ", schema.Fields.Select(f => $"{f.Name} ({f.Type.Word()})"));
}
