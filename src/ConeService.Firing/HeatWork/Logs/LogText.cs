using System.Buffers.Text;
using System.Globalization;
using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Reads a log that comes line by line as text: the header first, then the samples. Keeps nothing but the samples.</summary>
/// <param name="units">C or F from the request; null when it names none.</param>
/// <param name="timeColumn">Name of the time column from the request; null when it names none.</param>
/// <param name="temperatureColumn">Name of the temperature column from the request; null when it names none.</param>
internal sealed class LogText(string? units, string? timeColumn, string? temperatureColumn)
{
    /// <summary>Longest line, bytes.</summary>
    public const int LongestLine = 4096;

    private readonly List<HeatWarning> warnings = [];
    private readonly List<double> midnights = [];
    private LogColumns? columns;
    private LogSamples? samples;
    private int number;
    private double lastClock = double.NegativeInfinity;
    private double days;

    /// <summary>True when so much is wrong that reading on is of no use.</summary>
    public bool IsHopeless => samples?.IsHopeless == true;

    /// <summary>Takes a line without its line end.</summary>
    /// <exception cref="RefusedException">The header can't be used.</exception>
    public void Line(ReadOnlySpan<byte> line)
    {
        number++;
        if (line.Length > 0 && line[^1] == (byte)'\r') line = line[..^1];
        if (line.Trim((byte)' ').IsEmpty) return;
        if (columns is null)
        {
            columns = LogColumns.Read(Header(line), units, timeColumn, temperatureColumn);
            samples = new(columns.Fahrenheit, FieldOf);
            if (columns.Ignored.Count > 0) warnings.Add(new("columns-ignored", $"Columns that are neither the time nor the temperature were not read: {string.Join(", ", columns.Ignored.Take(20))}.", columns.Ignored.Count, []));
            return;
        }

        Sample(line, columns, samples!);
    }

    /// <summary>The log, cleaned, after its last line.</summary>
    /// <exception cref="RefusedException">The log can't be used.</exception>
    public CleanLog Clean()
    {
        if (samples is null) throw new RefusedException(new Finding("log-empty", "line 1", null, "The log is empty.", ["a header line and two samples or more"]));
        var log = samples.Clean();
        if (midnights.Count > 0) warnings.Add(HeatWarning.At("clock-passed-midnight", "The clock went from the end of a day to its beginning; the next day was taken.", midnights));
        return log with { Warnings = [.. warnings, .. log.Warnings] };
    }

    internal static string FieldOf(int line) => line < 1 ? "body" : string.Create(CultureInfo.InvariantCulture, $"line {line}");

    private static string Header(ReadOnlySpan<byte> line)
    {
        if (line is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..]) throw new RefusedException(new Finding("csv-malformed", "line 1", null, "The log is UTF-16, not UTF-8.", ["CSV in UTF-8"], "Save it as “CSV UTF-8”."));
        return Encoding.UTF8.GetString(line is [0xEF, 0xBB, 0xBF, ..] ? line[3..] : line);
    }

    private void Sample(ReadOnlySpan<byte> line, LogColumns layout, LogSamples into)
    {
        ReadOnlySpan<byte> time = default, temperature = default;
        var rest = line;
        var index = 0;
        for (; ; index++)
        {
            var end = rest.IndexOf((byte)layout.Separator);
            var cell = end < 0 ? rest : rest[..end];
            if (index == layout.Time) time = Bare(cell);
            if (index == layout.Temperature) temperature = Bare(cell);
            if (end < 0) break;
            rest = rest[(end + 1)..];
        }

        if (index < Math.Max(layout.Time, layout.Temperature))
        {
            into.Refuse(new("csv-malformed", FieldOf(number), Text(line), $"The line has {index + 1} of {layout.Count} cells.", [$"{layout.Count} cells"], "A file cut short while it was copied?"));
            return;
        }

        if (!TryTime(time, layout, out var hours, out var wrongTime)) into.Refuse(wrongTime!);
        else if (!TryNumber(temperature, layout.Separator, out var degrees)) into.Refuse(Unreadable("log-value-unreadable", temperature, "temperature", "1222.5"));
        else into.Add(number, hours, degrees);
    }

    private bool TryTime(ReadOnlySpan<byte> cell, LogColumns layout, out double hours, out Finding? finding)
    {
        finding = null;
        hours = 0;
        var form = layout.TimeForm;
        if (form == TimeForm.ByValue) form = cell.Length > 9 && cell[4] == (byte)'-' ? TimeForm.Timestamp : cell.Contains((byte)':') ? TimeForm.Clock : TimeForm.ByValue;
        switch (form)
        {
            case TimeForm.Clock when TryClock(cell, out hours):
                // A clock of the day starts again at midnight; a few late samples do not go back by half a day.
                if (hours + days < lastClock - 12 && lastClock - days <= 24)
                {
                    days += 24;
                    midnights.Add(hours + days);
                }

                hours += days;
                lastClock = Math.Max(lastClock, hours);
                return true;
            case TimeForm.Timestamp when TryTimestamp(cell, out hours):
                return true;
            case TimeForm.Seconds or TimeForm.Minutes or TimeForm.Hours when TryNumber(cell, layout.Separator, out hours):
                hours /= form switch { TimeForm.Seconds => 3600, TimeForm.Minutes => 60, _ => 1 };
                return true;
            case TimeForm.ByValue when TryNumber(cell, layout.Separator, out _):
                // Every line would say the same.
                throw new RefusedException(new Finding("log-time-unit-missing", FieldOf(number), Text(cell), "The header does not say whether the time is seconds, minutes or hours.", ["a header minutes, seconds or hours", "hh:mm:ss", "ISO 8601 timestamps"], "Name the column time_min, say."));
            default:
                finding = Unreadable("log-time-unreadable", cell, "time", form is TimeForm.Clock ? "01:30:00" : form is TimeForm.Timestamp ? "2026-11-25T08:00:00Z" : "90");
                return false;
        }
    }

    // h:mm:ss or h:mm; hours may pass 24 when counted since the start.
    private static bool TryClock(ReadOnlySpan<byte> cell, out double hours)
    {
        hours = 0;
        if (!Utf8Parser.TryParse(cell, out int h, out var used) || h < 0 || used + 3 > cell.Length || cell[used] != (byte)':') return false;
        cell = cell[(used + 1)..];
        if (!Utf8Parser.TryParse(cell, out int m, out used) || m is < 0 or > 59) return false;
        var s = 0.0;
        if (used < cell.Length && (cell[used] != (byte)':' || !double.TryParse(cell[(used + 1)..], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out s) || s >= 60)) return false;
        hours = h + (m / 60.0) + (s / 3600);
        return true;
    }

    private static bool TryTimestamp(ReadOnlySpan<byte> cell, out double hours)
    {
        hours = 0;
        Span<char> text = stackalloc char[40];
        if (cell.Length > text.Length || Encoding.UTF8.GetChars(cell, text) is not (> 9 and var length) || text[4] != '-') return false;
        if (!DateTimeOffset.TryParse(text[..length], CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var moment)) return false;
        hours = moment.UtcTicks / (double)TimeSpan.TicksPerHour;
        return true;
    }

    private static bool TryNumber(ReadOnlySpan<byte> cell, char separator, out double value)
    {
        if (double.TryParse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value)) return double.IsFinite(value);
        // Where commas do not separate cells they are decimal: 1222,5.
        if (separator == ',' || cell.Length > 32 || cell.IndexOf((byte)',') is not (>= 0 and var comma)) return false;
        Span<byte> point = stackalloc byte[32];
        cell.CopyTo(point);
        point[comma] = (byte)'.';
        return double.TryParse(point[..cell.Length], NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }

    private Finding Unreadable(string code, ReadOnlySpan<byte> cell, string what, string example) => new(
        code, FieldOf(number), Text(cell), cell.IsEmpty ? $"The {what} is blank." : $"“{Text(cell)}” is not a {what}.", [example],
        cell.IsEmpty ? "A line cut short, or a logger that lost its thermocouple? Take the line out if the reading is lost." : null);

    private static ReadOnlySpan<byte> Bare(ReadOnlySpan<byte> cell) => cell.Trim(" \""u8);

    private static string Text(ReadOnlySpan<byte> bytes) => Encoding.UTF8.GetString(bytes.Length > 60 ? bytes[..60] : bytes);
}
