using System.Globalization;

namespace ConeService.Data;

/// <summary>Reads every cell of a table into a value and checks it against its field.</summary>
internal static class CellChecks
{
    public static void Run(TableData table)
    {
        foreach (var row in table.Rows)
        {
            for (var i = 0; i < row.Cells.Length; i++)
                Check(table, row, i);
        }
    }

    private static void Check(TableData table, TableRow row, int index)
    {
        var (field, text) = (table.Schema.Fields[index], row.Cells[index]);
        if (HasControl(text))
        {
            Fault(table, row, index, FaultRules.ControlCharacter,
                $"has a line break or another control character; a cell is plain text in one line");
        }
        else if (text.Length > 0 && (char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1])))
        {
            Fault(table, row, index, FaultRules.BlankEdges, $"is '{text}'; a cell must not start or end with a blank");
        }
        else if (text.Length == 0)
        {
            if (field.Constraints.Required)
                Fault(table, row, index, FaultRules.Required, "is blank; a value is required");
        }
        else if (CellReader.Read(text, field, out var reason) is { } value)
        {
            row.Values[index] = value;
            Constraints(table, row, index, value);
        }
        else
        {
            Fault(table, row, index, FaultRules.Type, $"is '{text}'; it {reason}");
        }
    }

    private static bool HasControl(string text)
    {
        foreach (var c in text)
        {
            if (char.IsControl(c))
                return true;
        }

        return false;
    }

    private static void Constraints(TableData table, TableRow row, int index, object value)
    {
        var (text, constraints) = (row.Cells[index], table.Schema.Fields[index].Constraints);
        if (constraints is { Enum: null, Pattern: null, Minimum: null, Maximum: null })
            return;
        // Of a list each item is judged: the list as a whole is only how several values stand in one cell.
        foreach (var item in value as string[] ?? [text])
        {
            if (constraints.Enum is { } allowed && !allowed.Contains(item))
                Fault(table, row, index, FaultRules.Enum, $"is '{item}'; it must be one of {string.Join(", ", allowed)}");
            if (constraints.Pattern is { } pattern && !pattern.IsMatch(item))
                Fault(table, row, index, FaultRules.Pattern, $"is '{item}'; it must have the form {constraints.PatternText}");
        }

        if ((value as decimal? ?? value as int?) is not { } number)
            return;
        if (number < constraints.Minimum)
            Fault(table, row, index, FaultRules.Minimum,
                string.Create(CultureInfo.InvariantCulture, $"is {text}; it must be at least {constraints.Minimum}"));
        if (number > constraints.Maximum)
            Fault(table, row, index, FaultRules.Maximum,
                string.Create(CultureInfo.InvariantCulture, $"is {text}; it must be at most {constraints.Maximum}"));
    }

    private static void Fault(TableData table, TableRow row, int index, string rule, string reason)
    {
        var field = table.Schema.Fields[index].Name;
        if (row.Corrected?.TryGetValue(index, out var correction) == true)
        {
            // The print may be impossible, that is why it was corrected; here the adopted value is at fault.
            correction.Table.Fault(correction.Line, Corrections.Adopted, rule, $"as {table.Schema.Name}.{field} {reason}");
            table.Distrust();
        }
        else
        {
            table.Fault(row.Line, field, rule, reason);
        }
    }
}
