using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using NodaTime;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>The clocks of a place, by which times on the wall become times that passed.</summary>
/// <param name="zone">The zone of the IANA database.</param>
internal sealed class LogZone(DateTimeZone zone)
{
    // A change of clocks is half an hour or more.
    private const double LeastChange = 0.4;

    private static readonly LocalDateTime Epoch = new(1, 1, 1, 0, 0);

    /// <summary>True when the clocks of the place never change.</summary>
    public bool IsUtc { get; } = zone is { MinOffset: var least, MaxOffset: var most } && least == most;

    /// <summary>The zone of a name; null without one.</summary>
    /// <exception cref="RefusedException">There is no such zone.</exception>
    public static LogZone? Find(string? name)
    {
        if (name is null) return null;
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(name) is { } found) return new(found);
        var near = DateTimeZoneProviders.Tzdb.Ids
            .Where(id => id.Contains(name.Trim(), StringComparison.OrdinalIgnoreCase)
                || id.EndsWith("/" + name.Trim().Replace(' ', '_'), StringComparison.OrdinalIgnoreCase))
            .Take(5).ToList();
        throw new RefusedException(new Finding(
            FindingCodes.TimeZoneUnknown, "timeZone", name, Message.Of("logs.time-zone-unknown", ("zone", name)),
            near.Count > 0 && name.Length > 2 ? Message.Verbatim(near) : Message.Verbatim(["Europe/Berlin", "America/New_York", "UTC"])));
    }

    /// <summary>Turns hours on the wall into hours that passed, both since the year 1.</summary>
    /// <param name="points">The samples in the order of the log.</param>
    /// <param name="fieldOf">Names a sample.</param>
    /// <param name="warnings">A change of clocks is told here.</param>
    /// <exception cref="RefusedException">A time stands in the hour that the clocks left out.</exception>
    public void ToElapsed(Span<HeatPoint> points, Func<int, string> fieldOf, List<HeatWarning> warnings)
    {
        // A log from new to old goes through the hour that comes twice the other way. One that begins in it and never goes back
        // began in its second run.
        var forward = points[^1].Hours >= points[0].Hours;
        var second = !forward || !GoesBack(points);
        var (day, steady, changes) = (double.NaN, (double?)null, new List<double>());
        var (last, lastOffset, start) = (points[0].Hours, double.NaN, double.NaN);
        for (var i = 0; i < points.Length; i++)
        {
            var wall = points[i].Hours;
            if (Math.Floor(wall / 24) is var found && found != day) (day, steady) = (found, SteadyOffset(found));
            if (forward ? wall < last - LeastChange : wall > last + LeastChange) second = forward;
            var (offset, twice) = steady is { } known ? (known, false) : Offset(wall, second, fieldOf, i);
            if (!twice) second = !forward;
            if (i == 0) start = wall - offset;
            else if (offset != lastOffset) changes.Add(Math.Abs(wall - offset - start));
            (last, lastOffset) = (wall, offset);
            points[i] = points[i] with { Hours = wall - offset };
        }

        if (changes.Count > 0)
        {
            warnings.Add(HeatWarning.At(WarningCodes.ClockChanged, Message.Of("logs.clock-changed-zone", ("zone", zone.Id)), changes));
        }
    }

    private static bool GoesBack(ReadOnlySpan<HeatPoint> points)
    {
        for (var i = 1; i < points.Length; i++)
        {
            if (points[i].Hours < points[i - 1].Hours - LeastChange) return true;
        }

        return false;
    }

    // The offset of a day that has one, h.
    private double? SteadyOffset(double day)
    {
        var start = Epoch.PlusDays((int)day);
        var (first, last) = (zone.MapLocal(start), zone.MapLocal(start.PlusDays(1)));
        return first.Count == 1 && last.Count == 1 && first.EarlyInterval == last.EarlyInterval
            ? first.EarlyInterval.WallOffset.Seconds / 3600.0
            : null;
    }

    private (double Hours, bool Twice) Offset(double wall, bool second, Func<int, string> fieldOf, int at)
    {
        var local = Epoch.PlusMilliseconds((long)Math.Round(wall * 3_600_000));
        var map = zone.MapLocal(local);
        return map.Count switch
        {
            1 => (map.EarlyInterval.WallOffset.Seconds / 3600.0, false),
            2 => ((second ? map.LateInterval : map.EarlyInterval).WallOffset.Seconds / 3600.0, true),
            _ => throw new RefusedException(new Finding(
                FindingCodes.LogClockChange, fieldOf(at), null,
                Message.Of(
                    "logs.hour-left-out", ("zone", zone.Id),
                    ("time", local.ToString("uuuu-MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture))),
                Message.Verbatim(["?timeZone=UTC"]), Message.Of("logs.clock-not-changed"))),
        };
    }
}
