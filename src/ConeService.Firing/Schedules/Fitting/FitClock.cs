using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using NodaTime;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>The clock that a firing is told by: its start, and the zone whose changes of clocks it follows.</summary>
/// <param name="Start">The start, with the offset of its zone; null when none was given.</param>
/// <param name="Zone">The zone; null where the offset of the start holds all the time.</param>
internal sealed record FitClock(DateTimeOffset? Start, DateTimeZone? Zone)
{
    /// <summary>A moment of the firing; null without a start or a moment. A booking calendar has no use for seconds.</summary>
    /// <param name="hours">Since the start, h.</param>
    public DateTimeOffset? At(double? hours)
    {
        if (hours is not { } h || Start is not { } start) return null;
        var time = start.AddHours(h);
        var minute = new DateTimeOffset(time.Ticks - (time.Ticks % TimeSpan.TicksPerMinute), time.Offset);
        return Zone is null ? minute : MomentReader.In(Zone, minute);
    }

    /// <summary>Reads the members start and timeZone.</summary>
    public static FitClock Read(FitRequest request, List<Assumption> assumed, List<Finding> findings)
    {
        var zone = request.TimeZone is { } name ? Find(name, findings) : null;
        return new(MomentReader.Read(request.Start, "/start", zone, assumed, findings), zone);
    }

    private static DateTimeZone? Find(string name, List<Finding> findings)
    {
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(name) is { } found) return found;
        var near = name.Length < 3 ? [] : DateTimeZoneProviders.Tzdb.Ids
            .Where(id => id.Contains(name.Trim().Replace(' ', '_'), StringComparison.OrdinalIgnoreCase)).Take(5).ToList();
        findings.Add(new(
            FindingCodes.TimeZoneUnknown, "/timeZone", name, Message.Of("logs.time-zone-unknown", ("zone", name)),
            Message.Verbatim(near.Count > 0 ? near : ["Europe/Berlin", "America/New_York", "UTC"])));
        return null;
    }
}
