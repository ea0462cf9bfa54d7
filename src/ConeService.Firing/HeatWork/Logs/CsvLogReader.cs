using System.Globalization;
using System.IO.Pipelines;
using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing.Uploads;
using CsvHelper;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Reads a log that comes as CSV: the header, after whatever the logger writes before it, then a sample a row. Keeps nothing but
/// the samples. For one log only.
/// </summary>
/// <param name="units">C or F from the request; null when it names none.</param>
/// <param name="reading">How the log is to be read, from the request.</param>
internal sealed class CsvLogReader(string? units, LogReading reading)
{
    /// <summary>Longest line, bytes.</summary>
    public const int LongestLine = 4096;

    private const int MostSkipped = 200;
    private const double SkippedShare = 0.1;

    private static readonly Message Longest = Message.Of("logs.lines-allowed", ("bytes", LongestLine));

    private readonly List<HeatWarning> warnings = [];
    private LogPreamble preamble;
    private LogColumns? columns;
    private LogRows? rows;
    private int number;
    private int skipped;

    /// <summary>The line that is read next, for who must say where an upload broke off.</summary>
    public int NextLine { get; private set; } = 1;

    /// <summary>Reads a log to its end, or to where reading on is of no use.</summary>
    /// <param name="body">The log.</param>
    /// <param name="cancel">Breaks off.</param>
    /// <returns>The log, cleaned.</returns>
    /// <exception cref="RefusedException">The log can't be used.</exception>
    public async Task<CleanLog> ReadAsync(PipeReader body, CancellationToken cancel)
    {
        LogZone.Find(reading.TimeZone);
        var (utf8, converted) = await LogPreamble.AsUtf8Async(body, cancel);
        await using var conversion = converted;
        preamble = await LogPreamble.FindAsync(utf8, cancel);
        if (preamble.Bytes > 0)
        {
            var read = await utf8.ReadAtLeastAsync(preamble.Bytes, cancel);
            utf8.AdvanceTo(read.Buffer.GetPosition(preamble.Bytes));
        }

        using var csv = CsvReader.Create(
            utf8.AsStream(leaveOpen: true), CsvReading.Options(preamble.Separator, LongestLine), leaveOpen: true);
        try
        {
            while (rows?.IsHopeless != true && await csv.ReadAsync(cancel))
            {
                Patience.Check();
                Row(csv);
            }
        }
        catch (CsvFormatException malformed)
        {
            // Where this row ends is not known, so nothing after it can be read.
            var line = (int)malformed.LineNumber + preamble.AllLines;
            throw new RefusedException([.. rows?.Findings ?? [], new(
                FindingCodes.CsvMalformed, FieldOf(line), null,
                Message.Of("logs.line-unreadable", ("line", line)),
                [Message.Of("logs.quotation-marks"), Longest], Message.Of("logs.quotation-mark-alone"))]);
        }

        return Clean();
    }

    internal static string FieldOf(int line) => line < 1 ? "" : string.Create(CultureInfo.InvariantCulture, $"line {line}");

    private CleanLog Clean()
    {
        if (rows is null)
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogEmpty, "line 1", null, Message.Of("logs.empty"), [Message.Of("logs.header-and-samples")]));
        }

        skipped += preamble.Lines;
        if (skipped > 0) warnings.Add(new(WarningCodes.LinesSkipped, Message.Of("logs.lines-skipped", ("count", skipped)), skipped, []));
        return rows.Clean(warnings);
    }

    private void Row(CsvReader csv)
    {
        number = (int)csv.LineNumber + preamble.AllLines;
        NextLine = number + 1;
        if (csv.RawRecord.Length > LongestLine)
        {
            throw new RefusedException(new Finding(
                FindingCodes.CsvMalformed, FieldOf(number), null,
                Message.Of("logs.line-too-long", ("line", number), ("bytes", LongestLine)),
                [Message.Of("logs.sample-a-line"), Longest], Message.Of("logs.other-line-ends")));
        }

        if (csv.FieldCount == 0 || (csv.FieldCount == 1 && csv.GetSpan(0).IsEmpty)) return;
        if (columns is null)
        {
            Header(csv);
            return;
        }

        if (csv.FieldCount != columns.Count && Shape(csv, columns) is { } finding) rows!.Refuse(finding);
        else if (csv.FieldCount > columns.LastNeeded && !IsHeaderAgain(csv, columns)) rows!.Add(csv, number);
        else skipped++;
    }

    private void Header(CsvReader csv)
    {
        var names = Enumerable.Range(0, csv.FieldCount).Select(csv.GetString).ToList();
        columns = LogColumns.Read(names, preamble.Separator, Text(csv.RawRecord, 200), FieldOf(number), units, reading);
        rows = new(columns, reading, number);
        if (columns.Ignored.Count == 0) return;
        var ignored = Message.Of("logs.columns-ignored", ("columns", columns.Ignored.Take(20).ToArray()));
        warnings.Add(new(WarningCodes.ColumnsIgnored, ignored, columns.Ignored.Count, []));
    }

    // A logger that is restarted writes its header again.
    private static bool IsHeaderAgain(CsvReader csv, LogColumns layout)
    {
        var time = csv.GetSpan(layout.Time);
        if (time.IsEmpty || (time[0] is >= (byte)'0' and <= (byte)'9')) return false;
        return layout.Names[layout.Time] == csv.GetString(layout.Time).Trim()
            && layout.Names[layout.Temperatures[0].Index] == csv.GetString(layout.Temperatures[0].Index).Trim();
    }

    // Loggers leave cells out, or write empty ones, at the end of a line; more than that, and no cell is where the header says.
    private Finding? Shape(CsvReader csv, LogColumns layout)
    {
        var cells = csv.FieldCount;
        if (cells <= layout.LastNeeded)
        {
            // Remarks of the logger or of its owner have no number where the time is.
            if (IsRemark(csv.GetSpan(0)) && skipped < Math.Max(MostSkipped, SkippedShare * number)) return null;
            return new(
                FindingCodes.CsvMalformed, FieldOf(number), Text(csv.RawRecord),
                Message.Of("logs.too-few-cells", ("cells", cells), ("columns", layout.Count)),
                [Message.Of("logs.cells-allowed", ("count", layout.Count))], Message.Of("logs.cut-short"));
        }

        while (cells > layout.Count && csv.GetSpan(cells - 1).IsEmpty) cells--;
        return cells <= layout.Count ? null : new(
            FindingCodes.CsvMalformed, FieldOf(number), Text(csv.RawRecord),
            Message.Of("logs.too-many-cells", ("cells", cells), ("columns", layout.Count)),
            [Message.Of("logs.cells-allowed", ("count", layout.Count))],
            layout.Separator == ',' ? Message.Of("logs.comma-in-cell") : Message.Of("logs.separator-in-cell"));
    }

    private static bool IsRemark(ReadOnlySpan<byte> cell) =>
        !cell.IsEmpty && (cell[0] is (byte)'#' or (byte)';' or (byte)'/' or (byte)'-' || char.IsAsciiLetter((char)cell[0]));

    private static string Text(ReadOnlySpan<byte> bytes, int most = 60) =>
        Encoding.UTF8.GetString(bytes.Length > most ? bytes[..most] : bytes);
}
