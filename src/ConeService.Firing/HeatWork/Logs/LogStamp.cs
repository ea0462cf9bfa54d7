using System.Globalization;
using System.Text;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>A date and a time of a log, as written. Which of its first two numbers is the day may be open.</summary>
/// <param name="First">The first number of the date, the day where the order is known.</param>
/// <param name="Second">The second number of the date, the month where the order is known.</param>
/// <param name="Year">The year, four digits.</param>
/// <param name="Milliseconds">Since midnight.</param>
/// <param name="OrderOpen">True when either of the first two numbers may be the day.</param>
/// <param name="IsUtc">True when an offset was stated; the stamp is in UTC then.</param>
internal readonly record struct LogStamp(int First, int Second, int Year, int Milliseconds, bool OrderOpen, bool IsUtc)
{
    private const int DayMilliseconds = 86_400_000;

    // Bits of the parts in the packed number; 49 in all, which a double holds exactly.
    private const int MillisecondBits = 27;
    private const int PartBits = 5;

    /// <summary>The stamp in one number, of which no two stamps share one.</summary>
    public double Packed =>
        ((((((long)Year << PartBits) | (uint)First) << PartBits) | (uint)Second) << MillisecondBits) | (uint)Milliseconds;

    /// <summary>The date of a packed stamp in one number.</summary>
    public static long DateOf(double packed) => (long)packed >> MillisecondBits;

    /// <summary>The time of a packed stamp, milliseconds since midnight.</summary>
    public static int MillisecondsOf(double packed) => (int)((long)packed & ((1L << MillisecondBits) - 1));

    /// <summary>The parts of the date of a packed stamp.</summary>
    public static (int First, int Second, int Year) PartsOf(long date) =>
        ((int)(date >> PartBits) & 31, (int)date & 31, (int)(date >> (2 * PartBits)));

    /// <summary>A moment as a stamp.</summary>
    public static LogStamp Of(DateTime moment, bool isUtc) => new(
        moment.Day, moment.Month, moment.Year, (int)(moment.TimeOfDay.Ticks / TimeSpan.TicksPerMillisecond), false, isUtc);

    /// <summary>Reads a date with its time in one cell, or in two.</summary>
    /// <param name="date">The date, with its time when it is in the same cell; UTF-8 without blanks round it.</param>
    /// <param name="time">The time; empty when it stands in the same cell.</param>
    /// <param name="stamp">The stamp.</param>
    public static bool TryParse(ReadOnlySpan<byte> date, ReadOnlySpan<byte> time, out LogStamp stamp)
    {
        var rest = date;
        if (!TryDate(ref rest, out stamp)) return TryWords(date, time, out stamp);
        while (!rest.IsEmpty && rest[0] is (byte)' ' or (byte)'T' or (byte)'t' or (byte)',') rest = rest[1..];
        if (!time.IsEmpty)
        {
            // A spreadsheet may write midnight behind a date that has its time elsewhere.
            if (!rest.IsEmpty && (!TryTime(rest, out var midnight, out _) || midnight != 0)) return false;
            rest = time;
        }

        if (rest.IsEmpty || !TryTime(rest, out var milliseconds, out var offset)) return false;
        stamp = stamp with { Milliseconds = milliseconds };
        if (offset is not { } minutes) return true;
        if (stamp.OrderOpen || stamp.First > DateTime.DaysInMonth(stamp.Year, stamp.Second)) return false;
        var local = new DateTime(stamp.Year, stamp.Second, stamp.First, 0, 0, 0, DateTimeKind.Unspecified);
        stamp = Of(local.AddMilliseconds(milliseconds - (minutes * 60_000.0)), isUtc: true);
        return true;
    }

    private static bool TryDate(ref ReadOnlySpan<byte> text, out LogStamp stamp)
    {
        stamp = default;
        var start = text;
        if (!TryInteger(ref text, out var a, out var lengthOfA) || text.IsEmpty) return false;
        var mark = text[0];
        if (mark is not ((byte)'.' or (byte)'/' or (byte)'-')) return false;
        text = text[1..];
        if (!TryInteger(ref text, out var b, out var lengthOfB) || lengthOfB > 2 || text.IsEmpty || text[0] != mark) return false;
        text = text[1..];
        if (!TryInteger(ref text, out var c, out var lengthOfC) || lengthOfC == start.Length) return false;
        if (lengthOfA == 4)
        {
            stamp = new(c, b, a, 0, false, false);
            return lengthOfC <= 2 && b is >= 1 and <= 12 && c is >= 1 and <= 31 && a is >= 1900 and < 2200;
        }

        if (lengthOfC == 2) c += 2000;
        // Where points stand between the numbers, the day is first.
        stamp = new(a, b, c, 0, mark != (byte)'.', false);
        return lengthOfA <= 2 && c is >= 1900 and < 2200 && a is >= 1 and <= 31 && b is >= 1 and <= 31
            && (stamp.OrderOpen ? a <= 12 || b <= 12 : b <= 12);
    }

    private static bool TryTime(ReadOnlySpan<byte> text, out int milliseconds, out int? offset)
    {
        (milliseconds, offset) = (0, null);
        if (!TryInteger(ref text, out var hour, out _) || hour > 24) return false;
        var (minute, second, fraction) = (0, 0, 0.0);
        if (text.IsEmpty || text[0] != (byte)':') return TryHalf(text.Trim((byte)' '), ref hour) && Sum(out milliseconds);
        text = text[1..];
        if (!TryInteger(ref text, out minute, out _) || minute > 59) return false;
        if (!text.IsEmpty && text[0] == (byte)':')
        {
            text = text[1..];
            if (!TryInteger(ref text, out second, out _) || second > 59) return false;
            if (!text.IsEmpty && text[0] is (byte)'.' or (byte)',')
            {
                text = text[1..];
                if (!TryInteger(ref text, out var digits, out var length)) return false;
                fraction = digits / Math.Pow(10, length);
            }
        }

        text = text.Trim((byte)' ');
        if (text.IsEmpty) return Sum(out milliseconds);
        if (text.Length == 1 && text[0] is (byte)'Z' or (byte)'z') offset = 0;
        else if (text[0] is (byte)'+' or (byte)'-')
        {
            if (!TryOffset(text, out var minutes)) return false;
            offset = minutes;
        }
        else if (!TryHalf(text, ref hour)) return false;
        return Sum(out milliseconds);

        bool Sum(out int sum)
        {
            sum = (((((hour * 60) + minute) * 60) + second) * 1000) + (int)Math.Round(fraction * 1000);
            return sum <= DayMilliseconds;
        }
    }

    // +01:00, +0100 or +01, in minutes.
    private static bool TryOffset(ReadOnlySpan<byte> text, out int minutes)
    {
        minutes = 0;
        var sign = text[0] == (byte)'-' ? -1 : 1;
        text = text[1..];
        if (!TryInteger(ref text, out var hours, out var length)) return false;
        var rest = 0;
        if (length == 4) (hours, rest) = (hours / 100, hours % 100);
        else if (!text.IsEmpty && (text[0] != (byte)':' || !TryInteger(ref text, out rest, out _, skip: 1))) return false;
        minutes = sign * ((hours * 60) + rest);
        return text.IsEmpty && hours <= 14 && rest <= 59;
    }

    // 8 PM, 8 p.m.
    private static bool TryHalf(ReadOnlySpan<byte> text, ref int hour)
    {
        if (text.IsEmpty || text.Length > 4 || hour is < 1 or > 12) return false;
        var half = (char)(text[0] | 0x20);
        if (half is not ('a' or 'p') || !text[1..].ContainsAny((byte)'m', (byte)'M')) return false;
        hour = (hour % 12) + (half == 'p' ? 12 : 0);
        return true;
    }

    private static bool TryInteger(ref ReadOnlySpan<byte> text, out int value, out int length, int skip = 0)
    {
        (value, length) = (0, 0);
        text = text[skip..];
        while (length < text.Length && text[length] is >= (byte)'0' and <= (byte)'9' && length < 9)
        {
            value = (value * 10) + text[length++] - '0';
        }

        text = text[length..];
        return length > 0;
    }

    // Dates with the names of months: 28 Mar 2026 20:00, Mar 28, 2026 8:00 PM.
    private static bool TryWords(ReadOnlySpan<byte> date, ReadOnlySpan<byte> time, out LogStamp stamp)
    {
        stamp = default;
        if (date.Length + time.Length > 60 || !date.ContainsAnyInRange((byte)'A', (byte)'z')) return false;
        var text = Encoding.UTF8.GetString(date) + " " + Encoding.UTF8.GetString(time);
        if (!text.Contains(':', StringComparison.Ordinal)) return false;
        if (!DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var moment)) return false;
        var offset = text.Contains("GMT", StringComparison.Ordinal) || text.Contains('+', StringComparison.Ordinal);
        stamp = Of(moment.UtcDateTime, isUtc: offset);
        return stamp.Year > 1900;
    }
}
