using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Reads the times of a log in whatever form they are written. Dates are kept as written until the log is whole: only then can the
/// column tell the day from the month. For one log only.
/// </summary>
/// <param name="reading">Zone and order of dates from the request.</param>
internal sealed class LogTimes(LogReading reading)
{
    // 30,000 days are the year 1982, 75,000 the year 2105.
    private const double FirstSerial = 30_000;
    private const double LastSerial = 75_000;
    private const double FirstUnix = 1e8;
    private const double LastUnix = 4e9;
    private const double NearStart = 2.0 / 60;
    private const double LongestDay = 23.5;

    private readonly DateOrder order = new(reading.DateOrder);
    private double firstClock = double.NaN;
    private double lastClock = double.NegativeInfinity;
    private double days;
    private bool anyUtc;

    /// <summary>When a clock of the day began again, h.</summary>
    public List<double> Midnights { get; } = [];

    /// <summary>True when the hours of samples are packed stamps until <see cref="Resolve"/>.</summary>
    public bool ArePacked { get; private set; }

    private bool IsClock => !double.IsNaN(firstClock);

    /// <summary>Chooses the form of a bare number under a header that states no unit.</summary>
    /// <param name="value">The first number.</param>
    /// <returns>Serial number of a spreadsheet, UNIX time, or neither.</returns>
    public static TimeForm FormOf(double value) => value switch
    {
        >= FirstUnix and <= LastUnix => TimeForm.UnixSeconds,
        >= FirstUnix * 1000 and <= LastUnix * 1000 => TimeForm.UnixMilliseconds,
        // A count of seconds is whole; a moment of a day hardly ever is.
        >= FirstSerial and <= LastSerial when value != Math.Floor(value) => TimeForm.Serial,
        _ => TimeForm.ByValue,
    };

    /// <summary>The hours, or the packed stamp, of a number.</summary>
    /// <param name="form">What it counts.</param>
    /// <param name="value">The number.</param>
    public double Of(TimeForm form, double value)
    {
        if (form != TimeForm.Serial)
        {
            return value / form switch
            {
                TimeForm.Minutes => 60,
                TimeForm.Hours => 1,
                TimeForm.Milliseconds or TimeForm.UnixMilliseconds => 3_600_000,
                _ => 3600,
            };
        }

        // Day 0 of a spreadsheet is 1899-12-30.
        ArePacked = true;
        var moment = new DateTime(1899, 12, 30, 0, 0, 0, DateTimeKind.Unspecified)
            .AddMilliseconds(Math.Round(Math.Clamp(value, 0, LastSerial) * 86_400_000));
        return LogStamp.Of(moment, isUtc: false).Packed;
    }

    /// <summary>A date with a time, packed.</summary>
    public bool TryStamp(ReadOnlySpan<byte> date, ReadOnlySpan<byte> time, out double packed)
    {
        packed = 0;
        if (!LogStamp.TryParse(date, time, out var stamp) || !order.Note(stamp, date)) return false;
        anyUtc |= stamp.IsUtc;
        ArePacked = true;
        packed = stamp.Packed;
        return true;
    }

    /// <summary>h:mm:ss or h:mm, in hours, counted on through midnight.</summary>
    public bool TryClock(ReadOnlySpan<byte> cell, out double hours)
    {
        if (!LogCells.TryClock(cell, out hours)) return false;
        if (!IsClock) firstClock = hours;
        // A clock of the day starts again at midnight; a few late samples do not go back by half a day. One that counts from the
        // start and begins again long before a day is over is a logger that was restarted.
        var restarted = firstClock < NearStart && hours < NearStart && lastClock - days < LongestDay;
        if (hours + days < lastClock - 12 && lastClock - days <= 24 && !restarted)
        {
            days += 24;
            Midnights.Add(hours + days);
        }

        hours += days;
        lastClock = Math.Max(lastClock, hours);
        return true;
    }

    /// <summary>Turns packed stamps into hours since the first sample, and puts changes of clocks right.</summary>
    /// <param name="points">The samples in the order of the log.</param>
    /// <param name="fieldOf">Names a sample.</param>
    /// <param name="warnings">What was found is told here.</param>
    /// <exception cref="RefusedException">Day and month, or an hour that vanished, must be asked back.</exception>
    public void Resolve(Span<HeatPoint> points, Func<int, string> fieldOf, List<HeatWarning> warnings)
    {
        if (points.IsEmpty) return;
        var zone = LogZone.Find(reading.TimeZone);
        if (ArePacked) Unpack(points, fieldOf, warnings);
        if (ArePacked && !anyUtc)
        {
            if (zone is not null) zone.ToElapsed(points, fieldOf, warnings);
            else ClockChange.Undo(points, dated: true, fieldOf, warnings);
        }
        else if (IsClock && zone is null && firstClock >= NearStart)
        {
            ClockChange.Undo(points, dated: false, fieldOf, warnings);
        }
        else if (zone is not null && !zone.IsUtc)
        {
            warnings.Add(HeatWarning.Of(WarningCodes.TimeZoneUnused, Message.Of("logs.time-zone-unused", ("zone", reading.TimeZone))));
        }

        var start = points[0].Hours;
        if (start == 0) return;
        for (var i = 0; i < points.Length; i++) points[i] = points[i] with { Hours = points[i].Hours - start };
    }

    private void Unpack(Span<HeatPoint> points, Func<int, string> fieldOf, List<HeatWarning> warnings)
    {
        var dayFirst = order.IsDayFirst(points, fieldOf, warnings);
        var (date, midnight) = (-1L, 0.0);
        for (var i = 0; i < points.Length; i++)
        {
            var packed = points[i].Hours;
            if (LogStamp.DateOf(packed) is var found && found != date)
            {
                date = found;
                midnight = DateOrder.DayNumber(date, dayFirst) is { } day ? day * 24.0 : throw new RefusedException(new Finding(
                    FindingCodes.LogTimeUnreadable, fieldOf(i), null, Message.Of("logs.no-such-day"),
                    Message.Verbatim([.. Allowed])));
            }

            points[i] = points[i] with { Hours = midnight + (LogStamp.MillisecondsOf(packed) / 3_600_000.0) };
        }
    }

    /// <summary>What can be said of the order of dates.</summary>
    public static IReadOnlyList<string> Allowed { get; } = [LogReading.DayFirst, LogReading.MonthFirst];
}
