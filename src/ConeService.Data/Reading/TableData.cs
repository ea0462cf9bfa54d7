namespace ConeService.Data;

/// <summary>One table file of one package: its rows as text, then as values, and whether it may be relied on.</summary>
internal sealed class TableData(string package, TableSchema schema, List<PackageFault> faults)
{
    public string Package { get; } = package;

    public TableSchema Schema { get; } = schema;

    public List<TableRow> Rows { get; } = [];

    /// <summary>False once a fault was found: rules that read the table would then report shadows of that fault.</summary>
    public bool Sound { get; private set; } = true;

    /// <summary>False when rows could not be read at all: references into the table then cannot be judged.</summary>
    public bool Complete { get; private set; } = true;

    public void Fault(int? line, string? field, string rule, string reason)
    {
        Sound = false;
        faults.Add(new PackageFault(Package, Schema.Path, line, field, rule, reason));
    }

    /// <summary>A fault that leaves the table without some of its rows.</summary>
    public void Lose(int? line, string rule, string reason)
    {
        Complete = false;
        Fault(line, null, rule, reason);
    }

    /// <summary>Something that is said elsewhere already keeps this table from being relied on.</summary>
    public void Distrust() => Sound = false;

    /// <summary>As <see cref="Distrust"/>, where no row could be read.</summary>
    public void DistrustRows() => (Sound, Complete) = (false, false);
}
