using System.Globalization;
using System.IO.Pipelines;
using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Firing.Uploads;
using CsvHelper;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Reads a log that comes as CSV: the header first, then a sample a row. Keeps nothing but the samples. For one log only.</summary>
/// <param name="units">C or F from the request; null when it names none.</param>
/// <param name="timeColumn">Name of the time column from the request; null when it names none.</param>
/// <param name="temperatureColumn">Name of the temperature column from the request; null when it names none.</param>
internal sealed class LogText(string? units, string? timeColumn, string? temperatureColumn)
{
    /// <summary>Longest line, bytes.</summary>
    public const int LongestLine = 4096;

    private static readonly string Longest = $"lines of up to {LongestLine} bytes";

    private readonly List<HeatWarning> warnings = [];
    private readonly List<double> midnights = [];
    private LogColumns? columns;
    private LogSamples? samples;
    private int number;
    private double lastClock = double.NegativeInfinity;
    private double days;

    /// <summary>The line that is read next, for who must say where an upload broke off.</summary>
    public int NextLine { get; private set; } = 1;

    private bool IsHopeless => samples?.IsHopeless == true;

    /// <summary>Reads a log to its end, or to where reading on is of no use.</summary>
    /// <param name="body">The log, UTF-8.</param>
    /// <param name="cancel">Breaks off.</param>
    /// <returns>The log, cleaned.</returns>
    /// <exception cref="RefusedException">The log can't be used.</exception>
    public async Task<CleanLog> ReadAsync(PipeReader body, CancellationToken cancel)
    {
        var separator = await LogSeparator.PeekAsync(body, cancel);
        using var csv = CsvReader.Create(body.AsStream(leaveOpen: true), CsvReading.Options(separator, LongestLine), leaveOpen: true);
        try
        {
            while (!IsHopeless && await csv.ReadAsync(cancel)) Row(csv, separator);
        }
        catch (CsvFormatException malformed)
        {
            // Where this row ends is not known, so nothing after it can be read.
            throw new RefusedException([.. samples?.Findings ?? [], new(
                "csv-malformed", FieldOf((int)malformed.LineNumber), null, $"Line {malformed.LineNumber} can't be split into cells.", ["RFC 4180: quotation marks in pairs round a cell, doubled inside it", Longest],
                "A quotation mark without its partner?")]);
        }

        return Clean();
    }

    private CleanLog Clean()
    {
        if (samples is null) throw new RefusedException(new Finding("log-empty", "line 1", null, "The log is empty.", ["a header line and two samples or more"]));
        var log = samples.Clean();
        if (midnights.Count > 0) warnings.Add(HeatWarning.At("clock-passed-midnight", "The clock went from the end of a day to its beginning; the next day was taken.", midnights));
        return log with { Warnings = [.. warnings, .. log.Warnings] };
    }

    internal static string FieldOf(int line) => line < 1 ? "body" : string.Create(CultureInfo.InvariantCulture, $"line {line}");

    private void Row(CsvReader csv, char separator)
    {
        number = (int)csv.LineNumber;
        NextLine = number + 1;
        if (csv.RawRecord.Length > LongestLine)
        {
            throw new RefusedException(new Finding("csv-malformed", FieldOf(number), null, $"Line {number} is longer than {LongestLine} bytes.", ["one sample a line", Longest], "A file with other line ends, or not a CSV?"));
        }

        if (csv.FieldCount == 0 || (csv.FieldCount == 1 && csv.GetSpan(0).IsEmpty)) return;
        if (columns is null)
        {
            columns = LogColumns.Read([.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)], separator, Text(csv.RawRecord, 200), units, timeColumn, temperatureColumn);
            samples = new(columns.Fahrenheit, FieldOf);
            if (columns.Ignored.Count > 0) warnings.Add(new("columns-ignored", $"Columns that are neither the time nor the temperature were not read: {string.Join(", ", columns.Ignored.Take(20))}.", columns.Ignored.Count, []));
            return;
        }

        if (csv.FieldCount != columns.Count && Shape(csv, columns) is { } finding) samples!.Refuse(finding);
        else Sample(csv, columns, samples!);
    }

    // Loggers leave cells out, or write empty ones, at the end of a line; more than that, and no cell is where the header says.
    private Finding? Shape(CsvReader csv, LogColumns layout)
    {
        var cells = csv.FieldCount;
        if (cells <= Math.Max(layout.Time, layout.Temperature))
        {
            return new("csv-malformed", FieldOf(number), Text(csv.RawRecord), $"The line has {cells} of {layout.Count} cells.", [$"{layout.Count} cells"], "A file cut short while it was copied?");
        }

        while (cells > layout.Count && csv.GetSpan(cells - 1).IsEmpty) cells--;
        return cells <= layout.Count ? null : new(
            "csv-malformed", FieldOf(number), Text(csv.RawRecord), $"The line has {cells} cells for {layout.Count} columns.", [$"{layout.Count} cells"],
            layout.Separator == ',' ? "A comma inside a cell? Put the cell in quotation marks, or write decimals with a point." : "A separator inside a cell? Put the cell in quotation marks.");
    }

    private void Sample(CsvReader csv, LogColumns layout, LogSamples into)
    {
        if (!TryTime(csv, layout, out var hours, out var wrongTime)) into.Refuse(wrongTime!);
        else if (!LogCells.TryNumber(csv, layout.Temperature, layout.Separator, out var degrees)) into.Refuse(Unreadable("log-value-unreadable", csv.GetSpan(layout.Temperature), "temperature", "1222.5"));
        else into.Add(number, hours, degrees);
    }

    private bool TryTime(CsvReader csv, LogColumns layout, out double hours, out Finding? finding)
    {
        var cell = LogCells.Bare(csv.GetSpan(layout.Time));
        finding = null;
        hours = 0;
        var form = layout.TimeForm;
        if (form == TimeForm.ByValue) form = cell.Length > 9 && cell[4] == (byte)'-' ? TimeForm.Timestamp : cell.Contains((byte)':') ? TimeForm.Clock : TimeForm.ByValue;
        switch (form)
        {
            case TimeForm.Clock when LogCells.TryClock(cell, out hours):
                // A clock of the day starts again at midnight; a few late samples do not go back by half a day.
                if (hours + days < lastClock - 12 && lastClock - days <= 24)
                {
                    days += 24;
                    midnights.Add(hours + days);
                }

                hours += days;
                lastClock = Math.Max(lastClock, hours);
                return true;
            case TimeForm.Timestamp when LogCells.TryTimestamp(cell, out hours):
                return true;
            case TimeForm.Seconds or TimeForm.Minutes or TimeForm.Hours when LogCells.TryNumber(csv, layout.Time, layout.Separator, out hours):
                hours /= form switch { TimeForm.Seconds => 3600, TimeForm.Minutes => 60, _ => 1 };
                return true;
            case TimeForm.ByValue when LogCells.TryNumber(csv, layout.Time, layout.Separator, out _):
                // Every line would say the same.
                throw new RefusedException(new Finding("log-time-unit-missing", FieldOf(number), Text(cell), "The header does not say whether the time is seconds, minutes or hours.", ["a header minutes, seconds or hours", "hh:mm:ss", "ISO 8601 timestamps"], "Name the column time_min, say."));
            default:
                finding = Unreadable("log-time-unreadable", cell, "time", form is TimeForm.Clock ? "01:30:00" : form is TimeForm.Timestamp ? "2026-11-25T08:00:00Z" : "90");
                return false;
        }
    }

    private Finding Unreadable(string code, ReadOnlySpan<byte> cell, string what, string example) => new(
        code, FieldOf(number), Text(cell), cell.IsEmpty ? $"The {what} is blank." : $"“{Text(cell)}” is not a {what}.", [example],
        cell.IsEmpty ? "A line cut short, or a logger that lost its thermocouple? Take the line out if the reading is lost." : null);

    private static string Text(ReadOnlySpan<byte> bytes, int most = 60) => Encoding.UTF8.GetString(bytes.Length > most ? bytes[..most] : bytes);
}
