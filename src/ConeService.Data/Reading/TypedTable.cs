namespace ConeService.Data;

/// <summary>What the service needs a table to look like, so that every cell finds its place in a typed row.</summary>
internal abstract class TypedTable(string name, string[] key, Column[] columns)
{
    public string Name { get; } = name;

    /// <summary>True where the service can do without the table: packages of before it do not have it.</summary>
    public bool Optional { get; init; }

    /// <summary>False when the table could not be turned into typed rows.</summary>
    public bool HasShape(PackageDescriptor descriptor, List<PackageFault> faults)
    {
        var before = faults.Count;
        void Fault(string rule, string field, string reason) =>
            faults.Add(new PackageFault(descriptor.Name, PackageDescriptor.FileName, null, field, rule, reason));

        if (descriptor.Tables.FirstOrDefault(t => t.Name == Name) is not { } schema)
        {
            if (Optional)
                return true;
            Fault(FaultRules.MissingTable, Name, "is not described; the service needs this table");
            return false;
        }

        if (!schema.PrimaryKey.SequenceEqual(key))
            Fault(FaultRules.TableFields, $"{Name}.primaryKey", $"is {string.Join(", ", schema.PrimaryKey)}; it must be {string.Join(", ", key)}");
        foreach (var column in columns)
        {
            if (schema.Fields.FirstOrDefault(f => f.Name == column.Name) is not { } field)
                Fault(FaultRules.TableFields, $"{Name}.{column.Name}", "is missing; the service needs this field");
            else if (column.Objection(schema, field) is { } reason)
                Fault(FaultRules.TableFields, $"{Name}.{column.Name}", reason);
        }

        // A field no typed row carries would be read, checked and then silently dropped.
        foreach (var field in schema.Fields.Where(f => !columns.Any(c => c.Name == f.Name)))
            Fault(FaultRules.TableFields, $"{Name}.{field.Name}", "is not a field the service knows; it would be dropped");
        return faults.Count == before;
    }
}

/// <summary>A table with its typed rows.</summary>
internal sealed class TypedTable<T>(string name, string[] key, Column[] columns, Func<RowReader, T> bind) : TypedTable(name, key, columns)
{
    public IReadOnlyList<Located<T>> Bind(MergedTable table) =>
        [.. table.Rows.Select(r => new Located<T>(bind(new RowReader(table.Schema, r.Row)), r.Part.Package, r.Part.Schema.Path, r.Row.Line))];
}
