namespace ConeService.Data;

/// <summary>A table as it stands: its rows by their fields, whatever they mean. Corrections are applied. Immutable.</summary>
public sealed class PackageTable
{
    /// <summary>Stands between the parts of a key in the id of a row.</summary>
    public const char Between = '@';

    private readonly MergedTable table;
    private readonly Lazy<IReadOnlyList<PackageRow>> rows;
    private readonly Lazy<Dictionary<string, PackageRow>> byId;

    internal PackageTable(MergedTable table)
    {
        this.table = table;
        rows = new(() => [.. Made()]);
        byId = new(() => rows.Value.ToDictionary(r => r.Id, StringComparer.Ordinal));
    }

    /// <summary>Name of the table.</summary>
    public string Name => table.Schema.Name;

    /// <summary>What it holds.</summary>
    public string Title => table.Schema.Title;

    /// <summary>The same in a sentence.</summary>
    public string Description => table.Schema.Description;

    /// <summary>The fields of its key.</summary>
    public IReadOnlyList<string> Key => table.Schema.PrimaryKey;

    /// <summary>Its fields.</summary>
    public IReadOnlyList<PackageField> Fields => field ??= [.. table.Schema.Fields.Select(Of)];

    /// <summary>Number of rows.</summary>
    public int Count => table.Parts.Sum(p => p.Rows.Count);

    /// <summary>Its rows, those of the base package first.</summary>
    public IReadOnlyList<PackageRow> Rows => rows.Value;

    /// <summary>The row of an id; null when there is none.</summary>
    public PackageRow? Find(string id) => byId.Value.GetValueOrDefault(id);

    private PackageField Of(FieldSchema field)
    {
        var key = table.Schema.ForeignKeys.FirstOrDefault(k => k.Fields is [var only] && only == field.Name);
        return new(
            field.Name, field.Type.Word(), field.Description, field.Unit, field.UnitField, key?.Table ?? field.ItemReference?.Table,
            field.Constraints.Required);
    }

    private IEnumerable<PackageRow> Made()
    {
        var (key, names) = (table.Schema.IndexesOf(table.Schema.PrimaryKey), table.Schema.Fields.Select((f, i) => (f.Name, i))
            .ToDictionary(f => f.Name, f => f.i, StringComparer.Ordinal));
        foreach (var (part, row) in table.Rows)
            yield return new(part.Package, string.Join(Between, key.Select(k => row.Cells[k].Replace('/', Between))), names, row.Values);
    }
}

/// <summary>A field of a table.</summary>
/// <param name="Name">Name of the field.</param>
/// <param name="Type">string, number, integer or list.</param>
/// <param name="Description">What it says.</param>
/// <param name="Unit">Its unit, a code of UCUM.</param>
/// <param name="UnitField">The field of the row that has its unit.</param>
/// <param name="RefersTo">The table whose ids it holds.</param>
/// <param name="Required">Whether every row has it.</param>
public sealed record PackageField(
    string Name, string Type, string Description, string? Unit, string? UnitField, string? RefersTo, bool Required);

/// <summary>A row of a table.</summary>
public sealed class PackageRow
{
    private readonly Dictionary<string, int> names;
    private readonly object?[] values;

    internal PackageRow(string package, string id, Dictionary<string, int> names, object?[] values) =>
        (Package, Id, this.names, this.values) = (package, id, names, values);

    /// <summary>The package that has it: the base package or an overlay.</summary>
    public string Package { get; }

    /// <summary>Its key, the parts joined by <see cref="PackageTable.Between"/>, which stands for a slash inside them too.</summary>
    public string Id { get; }

    /// <summary>A value: a text, a <see cref="decimal"/>, an <see cref="int"/>, several texts; null for none, or for no such
    /// field.</summary>
    public object? this[string field] => names.TryGetValue(field, out var at) ? values[at] : null;

    /// <summary>The items of a list, or the one text that a field holds.</summary>
    public IReadOnlyList<string> Items(string field) => this[field] switch
    {
        string[] items => items,
        string item => [item],
        _ => [],
    };
}
