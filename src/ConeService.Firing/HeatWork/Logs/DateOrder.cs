using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Decides by the whole column whether the day or the month comes first: by a number above 12, or because only one order lets the days
/// follow each other. For one log only.
/// </summary>
/// <param name="stated">day-first or month-first from the request; null when it states none.</param>
internal sealed class DateOrder(string? stated)
{
    private bool dayFirst;
    private bool monthFirst;
    private string? open;

    /// <summary>Takes note of a date.</summary>
    /// <param name="stamp">The date.</param>
    /// <param name="cell">The cell, UTF-8.</param>
    /// <returns>False when no order can read it.</returns>
    public bool Note(LogStamp stamp, ReadOnlySpan<byte> cell)
    {
        if (!stamp.OrderOpen)
        {
            dayFirst = true;
            return !monthFirst;
        }

        dayFirst |= stamp.First > 12;
        monthFirst |= stamp.Second > 12;
        open ??= Encoding.UTF8.GetString(cell);
        return !(dayFirst && monthFirst);
    }

    /// <summary>The order.</summary>
    /// <exception cref="RefusedException">Every date can be read in both orders.</exception>
    public bool IsDayFirst(ReadOnlySpan<HeatPoint> packed, Func<int, string> fieldOf, List<HeatWarning> warnings)
    {
        if (dayFirst || monthFirst || open is null)
        {
            return stated is null || stated == LogReading.DayFirst != monthFirst ? !monthFirst : throw Contradicted(fieldOf(0));
        }

        if (stated is not null) return stated == LogReading.DayFirst;
        var (asDay, asMonth, days) = (Follow(packed, true), Follow(packed, false), Days(packed));
        if (days > 1 && asDay != asMonth)
        {
            warnings.Add(HeatWarning.Of(
                WarningCodes.DateOrderDecided,
                Message.Of("logs.date-order-decided", ("date", open), ("order", asDay ? LogReading.DayFirst : LogReading.MonthFirst))));
            return asDay;
        }

        var date = LogStamp.DateOf(packed[0].Hours);
        throw new RefusedException(new Finding(
            FindingCodes.LogDateAmbiguous, fieldOf(0), open,
            Message.Of("logs.date-ambiguous", ("date", open), ("day-first", Iso(date, true)), ("month-first", Iso(date, false))),
            Message.Verbatim([$"?dateOrder={LogReading.DayFirst}", $"?dateOrder={LogReading.MonthFirst}"])));
    }

    /// <summary>Days since the year 1; null when there is no such day.</summary>
    public static int? DayNumber(long date, bool dayFirst)
    {
        var (first, second, year) = LogStamp.PartsOf(date);
        var (day, month) = dayFirst ? (first, second) : (second, first);
        return month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month)
            ? new DateOnly(year, month, day).DayNumber
            : null;
    }

    private static string Iso(long date, bool dayFirst)
    {
        var (first, second, year) = LogStamp.PartsOf(date);
        var (day, month) = dayFirst ? (first, second) : (second, first);
        return FormattableString.Invariant($"{year:0000}-{month:00}-{day:00}");
    }

    private RefusedException Contradicted(string field) => new(new Finding(
        FindingCodes.LogTimeUnreadable, field, stated, Message.Of("logs.date-order-contradicted", ("order", stated)),
        Message.Verbatim([$"?dateOrder={(monthFirst ? LogReading.MonthFirst : LogReading.DayFirst)}"])));

    // No logger is silent for three days in a firing.
    private static bool Follow(ReadOnlySpan<HeatPoint> packed, bool dayFirst)
    {
        var (last, previous) = (-1L, 0);
        foreach (var point in packed)
        {
            if (LogStamp.DateOf(point.Hours) is var date && date == last) continue;
            if (DayNumber(date, dayFirst) is not { } day || (last >= 0 && Math.Abs(day - previous) > 3)) return false;
            (last, previous) = (date, day);
        }

        return true;
    }

    private static int Days(ReadOnlySpan<HeatPoint> packed)
    {
        var days = new HashSet<long>();
        foreach (var point in packed)
        {
            days.Add(LogStamp.DateOf(point.Hours));
            if (days.Count > 1) break;
        }

        return days.Count;
    }
}
