namespace ConeService.Data;

/// <summary>What the service needs a table to look like, so that every cell finds its place in a typed row.</summary>
/// <param name="name">Name of the table.</param>
/// <param name="since">The minor version of the package that brought the table; null when it was there from the start.</param>
/// <param name="keyFields">How many of the first columns are the key.</param>
/// <param name="columns">The columns, in the order of the typed row.</param>
internal abstract class TypedTable(string name, Version? since, int keyFields, IReadOnlyList<Column> columns)
{
    public string Name { get; } = name;

    public IReadOnlyList<Column> Columns { get; } = columns;

    private IEnumerable<Column> FirstColumns => Columns.Where(c => !c.IsRank).Take(keyFields);

    /// <summary>The fields of the key.</summary>
    public IReadOnlyList<string> Key =>
        [.. FirstColumns.Select(c => Columns.FirstOrDefault(i => i.InsteadOf == c.Name)?.Name ?? c.Name)];

    /// <summary>The fields of the key before a later column took a place in it; mostly the same.</summary>
    public IReadOnlyList<string> EarlierKey => [.. FirstColumns.Select(c => c.Name)];

    /// <summary>Whether a package of this version may do without the table, having been written before it.</summary>
    public bool MayBeAbsent(Version? version) => version < since;

    /// <summary>The table of a package that was written before it: no rows, and closed to overlays.</summary>
    public TableSchema AbsentSchema() =>
        new(Name, Name + ".csv", Name, "", false, [.. Columns.Select(c => c.AbsentField())], Key, [], []);

    /// <summary>False when the table could not be turned into typed rows.</summary>
    public bool HasShape(PackageDescriptor descriptor, List<PackageFault> faults)
    {
        var before = faults.Count;
        void Fault(string rule, string field, string reason) =>
            faults.Add(new PackageFault(descriptor.Name, PackageDescriptor.FileName, null, field, rule, reason));

        if (descriptor.Tables.FirstOrDefault(t => t.Name == Name) is not { } schema)
        {
            if (MayBeAbsent(descriptor.Minor))
                return true;
            Fault(FaultRules.MissingTable, Name, "is not described; the service needs this table");
            return false;
        }

        if (!schema.PrimaryKey.SequenceEqual(Key) && !HasEarlierKey(schema, descriptor.Minor))
            Fault(FaultRules.TableFields, $"{Name}.primaryKey",
                $"is {string.Join(", ", schema.PrimaryKey)}; it must be {string.Join(", ", Key)}");
        foreach (var column in Columns)
        {
            if (schema.Fields.FirstOrDefault(f => f.Name == column.Name) is { } field)
            {
                if (column.Objection(schema, field) is { } reason)
                    Fault(FaultRules.TableFields, $"{Name}.{column.Name}", reason);
            }
            else if (!column.MayBeAbsent(descriptor.Minor))
            {
                Fault(FaultRules.TableFields, $"{Name}.{column.Name}", "is missing; the service needs this field");
            }
        }

        // A field no typed row carries would be read, checked and then silently dropped.
        foreach (var field in schema.Fields.Where(f => !Columns.Any(c => c.Name == f.Name)))
            Fault(FaultRules.TableFields, $"{Name}.{field.Name}", "is not a field the service knows; it would be dropped");
        return faults.Count == before;
    }

    /// <summary>Whether a package of this version has the key of before, in which a later column has taken a place.</summary>
    private bool HasEarlierKey(TableSchema schema, Version? version) =>
        Columns.Any(c => c.InsteadOf is not null && version < c.Since) && schema.PrimaryKey.SequenceEqual(EarlierKey);
}

/// <summary>A table with its typed rows.</summary>
internal sealed class TypedTable<T>(string name, Version? since, int keyFields, Func<RowColumns, T> bind)
    : TypedTable(name, since, keyFields, RowColumns.Declare(bind))
{
    public TypedTable(string name, int keyFields, Func<RowColumns, T> bind)
        : this(name, null, keyFields, bind)
    {
    }

    public IReadOnlyList<Located<T>> Bind(MergedTable table)
    {
        var reader = RowColumns.Reader(table.Schema.IndexesOf([.. Columns.Select(c => c.Name)]));
        return [.. table.Rows.Select(r => new Located<T>(reader.Read(r.Row, bind), r.Part.Package, r.Part.Schema.Path, r.Row.Line))];
    }
}
