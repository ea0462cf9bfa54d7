namespace ConeService.Data;

/// <summary>How the rows of a file become rows of the whole table: columns that came after the file was written are filled in.</summary>
internal sealed class TableCompletion
{
    private readonly TableSchema _file;
    private readonly (int Place, Column? Absent)[] _cells;

    private TableCompletion(TableSchema file, TableSchema whole, Dictionary<string, Column> absent)
    {
        (_file, Schema) = (file, whole with { Path = file.Path, Title = file.Title });
        _cells = [.. whole.Fields.Select(f => (file.IndexOf(f.Name), absent.GetValueOrDefault(f.Name)))];
    }

    /// <summary>The schema of the completed rows.</summary>
    public TableSchema Schema { get; }

    /// <summary>The header of the file.</summary>
    public IReadOnlyList<FieldSchema> Header => _file.Fields;

    /// <summary>For a table of the base package: what is later than its version may be absent.</summary>
    public static TableCompletion OfBase(TableSchema file, TypedTable? typed, Version? version)
    {
        var absent = (typed?.Columns ?? []).Where(c => c.MayBeAbsent(version) && file.IndexOf(c.Name) < 0).ToDictionary(c => c.Name);
        // A column that came into the key is filled in like any other, and then the rows have today's key.
        var key = absent.Values.Any(c => c.InsteadOf is not null) && file.PrimaryKey.SequenceEqual(typed!.EarlierKey)
            ? typed.Key
            : file.PrimaryKey;
        return new(file, file with { Fields = [.. file.Fields, .. absent.Values.Select(c => c.AbsentField())], PrimaryKey = key }, absent);
    }

    /// <summary>
    /// For a table of an overlay, against that of the base package; null when its fields are others. An overlay does not say
    /// for which version of the base package it was written, so any later column may be absent.
    /// </summary>
    public static TableCompletion? OfOverlay(TableSchema file, TableSchema whole, TypedTable? typed)
    {
        var absent = (typed?.Columns ?? []).Where(c => c.Since is not null && file.IndexOf(c.Name) < 0).ToDictionary(c => c.Name);
        var expected = whole.Fields.Where(f => !absent.ContainsKey(f.Name)).Select(f => (f.Name, f.Type));
        return file.Fields.Select(f => (f.Name, f.Type)).SequenceEqual(expected) ? new(file, whole, absent) : null;
    }

    /// <summary>The cells of a whole row, from those of the file.</summary>
    public string[] Complete(string[] cells) => Array.TrueForAll(_cells, c => c.Absent is null)
        ? cells
        : [.. _cells.Select(c => c.Absent is { } column ? column.Absent(name => cells[_file.IndexOf(name)]) : cells[c.Place])];
}
