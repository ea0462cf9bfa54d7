using CsvHelper;

namespace ConeService.Data;

/// <summary>Reads the rows of one table file as text, and checks what can be said of rows before their meaning.</summary>
internal static class CsvTableReader
{
    private static readonly CsvReaderOptions Strict = new()
    {
        Separator = ',',
        // The header is checked field by field here, not mapped by name.
        HasHeader = false,
        // A blank line is a row without cells, not something to pass over.
        SkipEmptyLines = false,
        TrimWhitespace = false,
        TrackLineNumbers = true,
        MalformedData = CsvMalformedDataHandling.Throw,
    };

    public static TableData Read(LoadedPackage package, TableCompletion completion, List<PackageFault> faults)
    {
        var schema = completion.Schema;
        var table = new TableData(package.Name, schema, faults);
        if (!package.Snapshot.Files.TryGetValue(schema.Path, out var bytes))
        {
            if (package.Snapshot.IsUnreadable(schema.Path))
                table.DistrustRows();
            else
                table.Lose(null, FaultRules.MissingFile, $"is missing; datapackage.json describes it as the table {schema.Name}");
            return table;
        }

        if (TextFile.Read(bytes, (line, rule, reason) => table.Fault(line, null, rule, reason)) is { } text)
            ReadRows(text, completion, table);
        else
            table.DistrustRows();
        return table;
    }

    private static void ReadRows(string text, TableCompletion completion, TableData table)
    {
        using var reader = CsvReader.FromText(text, Strict);
        try
        {
            var header = reader.Read() ? Cells(reader) : [];
            var fields = completion.Header.Select(f => f.Name).ToList();
            if (!header.SequenceEqual(fields, StringComparer.Ordinal))
            {
                table.Lose(1, FaultRules.Header, $"is {string.Join(',', header)}; it must be {string.Join(',', fields)}");
                return;
            }

            while (reader.Read())
                AddRow((int)reader.LineNumber, Cells(reader), completion, table);
        }
        catch (CsvFormatException e)
        {
            // Where one row ends is no longer known, so nothing after it can be judged.
            table.Lose((int?)e.LineNumber, FaultRules.CsvQuoting,
                $"cannot be split into cells, and the rows after it are not read: {e.Message}");
        }
    }

    private static void AddRow(int line, string[] cells, TableCompletion completion, TableData table)
    {
        if (cells.Length == completion.Header.Count)
            table.Rows.Add(new TableRow(line, completion.Complete(cells)));
        else
            table.Lose(line, FaultRules.RowShape, $"has {cells.Length} cells; it must have {completion.Header.Count}");
    }

    private static string[] Cells(CsvReader reader)
    {
        var cells = new string[reader.FieldCount];
        for (var i = 0; i < cells.Length; i++)
            cells[i] = reader.GetString(i);
        return cells;
    }
}
