namespace ConeService.Data;

/// <summary>One row: where it starts, its cells as text and, once read, as values.</summary>
internal sealed class TableRow(int line, string[] cells)
{
    public int Line { get; } = line;

    public string[] Cells { get; } = cells;

    /// <summary>Per field: null for a blank cell, else string, decimal, int or string[].</summary>
    public object?[] Values { get; } = new object?[cells.Length];

    /// <summary>Per corrected field, the row of the corrections table that changed it; null for the rows that have none.</summary>
    public Dictionary<int, (TableData Table, int Line)>? Corrected { get; private set; }

    /// <summary>Puts the adopted value in the place of the printed one.</summary>
    public void Correct(int field, string adopted, TableData corrections, int line)
    {
        Cells[field] = adopted;
        (Corrected ??= [])[field] = (corrections, line);
    }

    /// <summary>The cells named, joined by a slash: how a key is written in corrections.csv and in faults.</summary>
    public string Key(int[] fields) => fields is [var only] ? Cells[only] : string.Join('/', fields.Select(f => Cells[f]));
}
