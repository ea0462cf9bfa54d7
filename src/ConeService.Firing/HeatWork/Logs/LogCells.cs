using System.Buffers.Text;
using System.Globalization;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Reads the cells of a log, UTF-8.</summary>
internal static class LogCells
{
    private const int MostDigits = 15;

    private static readonly double[] Powers =
        [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

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

    /// <summary>
    /// A plain decimal number, digits with at most one point: what nearly every cell is. Up to fifteen digits and their power of ten are
    /// exact as doubles, so that one division rounds correctly.
    /// </summary>
    /// <param name="cell">The cell, UTF-8.</param>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Digits behind the point; -1 without one.</param>
    /// <returns>False for everything else, which <see cref="LogNumber"/> reads.</returns>
    public static bool TryPlain(ReadOnlySpan<byte> cell, out double value, out int decimals)
    {
        (value, decimals) = (0, -1);
        if ((uint)(cell.Length - 1) > MostDigits - 1) return false;
        var (at, digits, negative) = (0, 0L, cell[0] == (byte)'-');
        if (negative) at++;
        var point = -1;
        for (; at < cell.Length; at++)
        {
            var digit = cell[at] - '0';
            if ((uint)digit <= 9) digits = (digits * 10) + digit;
            else if (cell[at] == (byte)'.' && point < 0) point = at;
            else return false;
        }

        if (point >= 0) decimals = cell.Length - point - 1;
        if (cell.Length - (point >= 0 ? 1 : 0) - (negative ? 1 : 0) == 0) return false;
        value = decimals > 0 ? digits / Powers[decimals] : digits;
        if (negative) value = -value;
        return true;
    }

    /// <summary>A cell without the blanks round it.</summary>
    public static ReadOnlySpan<byte> Bare(ReadOnlySpan<byte> cell) => cell.Trim(" \t"u8);
}
