namespace ConeService.Data;

/// <summary>Foreign keys and item references of a descriptor must point at fields that exist.</summary>
internal static class ReferenceTargets
{
    public static void Check(IReadOnlyList<TableSchema> tables, DescriptorFaults found)
    {
        foreach (var table in tables)
        {
            foreach (var key in table.ForeignKeys)
            {
                foreach (var field in key.References)
                    Target(tables, key.Table, field, $"{table.Name}.foreignKeys", found);
            }

            foreach (var field in table.Fields)
            {
                if (field.ItemReference is { } item)
                    Target(tables, item.Table, item.Field, $"{table.Name}.{field.Name}.itemReference", found);
            }
        }
    }

    private static void Target(IReadOnlyList<TableSchema> tables, string table, string field, string where, DescriptorFaults found)
    {
        if (tables.FirstOrDefault(t => t.Name == table) is not { } target || target.IndexOf(field) < 0)
            found.Add(where, $"refers to {table}.{field}, which is not a field of this package");
    }
}
