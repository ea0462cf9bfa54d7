using System.Globalization;
using System.IO.Pipelines;
using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Firing.Uploads;
using CsvHelper;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Reads a log that comes as CSV: the header first, then a sample a row. Keeps nothing but the samples. For one log only.
/// </summary>
/// <param name="units">C or F from the request; null when it names none.</param>
/// <param name="timeColumn">Name of the time column from the request; null when it names none.</param>
/// <param name="temperatureColumn">Name of the temperature column from the request; null when it names none.</param>
internal sealed class CsvLogReader(string? units, string? timeColumn, string? temperatureColumn)
{
    /// <summary>Longest line, bytes.</summary>
    public const int LongestLine = 4096;

    private static readonly Message Longest = Message.Of("logs.lines-allowed", ("bytes", LongestLine));

    private readonly List<HeatWarning> warnings = [];
    private readonly List<double> midnights = [];
    private readonly DecimalMark decimals = new();
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
        var separator = await CsvSeparator.PeekAsync(body, cancel);
        using var csv = CsvReader.Create(body.AsStream(leaveOpen: true), CsvReading.Options(separator, LongestLine), leaveOpen: true);
        try
        {
            while (!IsHopeless && await csv.ReadAsync(cancel)) Row(csv, separator);
        }
        catch (CsvFormatException malformed)
        {
            // Where this row ends is not known, so nothing after it can be read.
            throw new RefusedException([.. samples?.Findings ?? [], new(
                FindingCodes.CsvMalformed, FieldOf((int)malformed.LineNumber), null,
                Message.Of("logs.line-unreadable", ("line", malformed.LineNumber)),
                [Message.Of("logs.quotation-marks"), Longest], Message.Of("logs.quotation-mark-alone"))]);
        }

        return Clean();
    }

    private CleanLog Clean()
    {
        if (samples is null)
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogEmpty, "line 1", null, Message.Of("logs.empty"), [Message.Of("logs.header-and-samples")]));
        }

        if (decimals.Ambiguous(line => FieldOf((int)line)) is { } ambiguous) samples.Refuse(ambiguous);
        var log = samples.Clean();
        if (midnights.Count > 0) warnings.Add(HeatWarning.At(WarningCodes.ClockPassedMidnight, Message.Of("logs.midnight"), midnights));
        return log with { Warnings = [.. warnings, .. log.Warnings] };
    }

    internal static string FieldOf(int line) => line < 1 ? "" : string.Create(CultureInfo.InvariantCulture, $"line {line}");

    private void Row(CsvReader csv, char separator)
    {
        number = (int)csv.LineNumber;
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
            var names = Enumerable.Range(0, csv.FieldCount).Select(csv.GetString).ToList();
            columns = LogColumns.Read(names, separator, Text(csv.RawRecord, 200), units, timeColumn, temperatureColumn);
            samples = new(columns.Fahrenheit, FieldOf);
            if (columns.Ignored.Count == 0) return;
            var ignored = Message.Of("logs.columns-ignored", ("columns", columns.Ignored.Take(20).ToArray()));
            warnings.Add(new(WarningCodes.ColumnsIgnored, ignored, columns.Ignored.Count, []));
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

    private void Sample(CsvReader csv, LogColumns layout, LogSamples into)
    {
        if (!TryTime(csv, layout, out var hours, out var wrongTime)) into.Refuse(wrongTime!);
        else if (TryNumber(csv, layout.Temperature, layout.Separator, out var degrees)) into.Add(number, hours, degrees);
        else into.Refuse(UnreadableTemperature(csv.GetSpan(layout.Temperature)));
    }

    private bool TryNumber(CsvReader csv, int index, char separator, out double value)
    {
        if (!LogCells.TryNumber(csv, index, separator, out value)) return false;
        // Where commas separate cells a number has none, and its point is decimal.
        if (separator != ',') decimals.Note(LogCells.Bare(csv.GetSpan(index)), number);
        return true;
    }

    private bool TryTime(CsvReader csv, LogColumns layout, out double hours, out Finding? finding)
    {
        var cell = LogCells.Bare(csv.GetSpan(layout.Time));
        finding = null;
        hours = 0;
        var form = layout.TimeForm;
        if (form == TimeForm.ByValue && cell.Length > 9 && cell[4] == (byte)'-') form = TimeForm.Timestamp;
        else if (form == TimeForm.ByValue && cell.Contains((byte)':')) form = TimeForm.Clock;
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
            case TimeForm.Seconds or TimeForm.Minutes or TimeForm.Hours
                when TryNumber(csv, layout.Time, layout.Separator, out hours):
                hours /= form switch { TimeForm.Seconds => 3600, TimeForm.Minutes => 60, _ => 1 };
                return true;
            case TimeForm.ByValue when LogCells.TryNumber(csv, layout.Time, layout.Separator, out _):
                // Every line would say the same.
                throw new RefusedException(new Finding(
                    FindingCodes.LogTimeUnitMissing, FieldOf(number), Text(cell), Message.Of("logs.time-unit-missing"),
                    [Message.Of("logs.time-header"), Message.Verbatim("hh:mm:ss"), Message.Of("logs.iso-timestamps")],
                    Message.Of("logs.name-time-column")));
            default:
                finding = UnreadableTime(cell, form);
                return false;
        }
    }

    private Finding UnreadableTime(ReadOnlySpan<byte> cell, TimeForm form)
    {
        var example = form switch { TimeForm.Clock => "01:30:00", TimeForm.Timestamp => "2026-11-25T08:00:00Z", _ => "90" };
        var text = Text(cell);
        return AmbiguousNumber.Finding(FieldOf(number), text) ?? new(
            FindingCodes.LogTimeUnreadable, FieldOf(number), text,
            cell.IsEmpty ? Message.Of("logs.time-blank") : Message.Of("logs.time-unreadable", ("text", text)),
            Message.Verbatim([example]), CutShort(cell));
    }

    private Finding UnreadableTemperature(ReadOnlySpan<byte> cell)
    {
        var text = Text(cell);
        return AmbiguousNumber.Finding(FieldOf(number), text) ?? new(
            FindingCodes.LogValueUnreadable, FieldOf(number), text,
            cell.IsEmpty ? Message.Of("logs.temperature-blank") : Message.Of("logs.temperature-unreadable", ("text", text)),
            Message.Verbatim(["1222.5"]), CutShort(cell));
    }

    private static Message? CutShort(ReadOnlySpan<byte> cell) => cell.IsEmpty ? Message.Of("logs.line-cut-short") : null;

    private static string Text(ReadOnlySpan<byte> bytes, int most = 60) =>
        Encoding.UTF8.GetString(bytes.Length > most ? bytes[..most] : bytes);
}
