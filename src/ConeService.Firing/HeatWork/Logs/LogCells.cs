using System.Buffers;
using System.Buffers.Text;
using System.Globalization;
using System.Text;
using CsvHelper;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Reads the cells of a log, UTF-8.</summary>
internal static class LogCells
{
    private static readonly SearchValues<byte> Plain = SearchValues.Create("-.0123456789"u8);

    /// <summary>h:mm:ss or h:mm, in hours; they may pass 24 when counted since the start.</summary>
    public static bool TryClock(ReadOnlySpan<byte> cell, out double hours)
    {
        hours = 0;
        if (!Utf8Parser.TryParse(cell, out int h, out var used) || h < 0 || used + 3 > cell.Length || cell[used] != (byte)':') return false;
        cell = cell[(used + 1)..];
        if (!Utf8Parser.TryParse(cell, out int m, out used) || m is < 0 or > 59) return false;
        var s = 0.0;
        if (used < cell.Length && (cell[used] != (byte)':' || !TrySeconds(cell[(used + 1)..], out s))) return false;
        hours = h + (m / 60.0) + (s / 3600);
        return true;
    }

    private static bool TrySeconds(ReadOnlySpan<byte> text, out double seconds) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out seconds) && seconds < 60;

    /// <summary>ISO 8601, in hours since the year 1; UTC where it states no offset.</summary>
    public static bool TryTimestamp(ReadOnlySpan<byte> cell, out double hours)
    {
        hours = 0;
        Span<char> text = stackalloc char[40];
        if (cell.Length > text.Length || Encoding.UTF8.GetChars(cell, text) is not (> 9 and var length) || text[4] != '-') return false;
        if (!DateTimeOffset.TryParse(text[..length], CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var moment))
        {
            return false;
        }

        hours = moment.UtcTicks / (double)TimeSpan.TicksPerHour;
        return true;
    }

    /// <summary>The number in a cell of the current row.</summary>
    public static bool TryNumber(CsvReader csv, int index, char separator, out double value)
    {
        // The reader's own parser is several times as fast, but does not say how it takes signs of thousands: plain decimals only.
        var cell = csv.GetSpan(index);
        return (cell.IndexOfAnyExcept(Plain) < 0 && csv.TryParse(index, out value)) || TryNumber(Bare(cell), separator, out value);
    }

    /// <summary>A cell without the blanks round it.</summary>
    public static ReadOnlySpan<byte> Bare(ReadOnlySpan<byte> cell) => cell.Trim(" \t"u8);

    /// <summary>A finite number with a decimal point, or with a decimal comma where commas do not separate cells.</summary>
    public static bool TryNumber(ReadOnlySpan<byte> cell, char separator, out double value)
    {
        const NumberStyles plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (double.TryParse(cell, plain | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value))
        {
            return double.IsFinite(value);
        }

        // Where commas do not separate cells they are decimal: 1222,5.
        if (separator == ',' || cell.Length > 32 || cell.IndexOf((byte)',') is not (>= 0 and var comma)) return false;
        Span<byte> point = stackalloc byte[32];
        cell.CopyTo(point);
        point[comma] = (byte)'.';
        return double.TryParse(point[..cell.Length], plain, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }
}
