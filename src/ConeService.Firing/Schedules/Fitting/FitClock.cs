using System.Globalization;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using NodaTime;
using NodaTime.Text;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>The clock that a firing is told by: its start, and the zone whose changes of clocks it follows.</summary>
/// <param name="Start">The start, with the offset of its zone; null when none was given.</param>
/// <param name="Zone">The zone; null where the offset of the start holds all the time.</param>
internal sealed partial record FitClock(DateTimeOffset? Start, DateTimeZone? Zone)
{
    /// <summary>A moment of the firing; null without a start or a moment. A booking calendar has no use for seconds.</summary>
    /// <param name="hours">Since the start, h.</param>
    public DateTimeOffset? At(double? hours)
    {
        if (hours is not { } h || Start is not { } start) return null;
        var time = start.AddHours(h);
        return In(Zone, new(time.Ticks - (time.Ticks % TimeSpan.TicksPerMinute), time.Offset));
    }

    /// <summary>Reads the members start and timeZone.</summary>
    public static FitClock Read(FitRequest request, List<Assumption> assumed, List<Finding> findings)
    {
        var zone = request.TimeZone is { } name ? Find(name, findings) : null;
        var text = request.Start?.Trim() ?? "";
        if (zone is not null && Local().IsMatch(text)) return new(InZone(text, zone, assumed, findings), zone);
        var start = FitReader.Start(request.Start, findings);
        return new(start is { } moment ? In(zone, moment) : null, zone);
    }

    private static DateTimeOffset In(DateTimeZone? zone, DateTimeOffset moment) =>
        zone is null ? moment : Instant.FromDateTimeOffset(moment).InZone(zone).ToDateTimeOffset();

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

    private static DateTimeOffset? InZone(string text, DateTimeZone zone, List<Assumption> assumed, List<Finding> findings)
    {
        var read = LocalDateTimePattern.ExtendedIso.Parse(text.Replace(' ', 'T') + (text.Length == 16 ? ":00" : ""));
        // Leaves the eras to the reader of moments with an offset.
        if (!read.Success || read.Value.Year is < 1970 or > 2200) return FitReader.Start(text + "Z", findings);
        var map = zone.MapLocal(read.Value);
        if (map.Count == 0)
        {
            var later = map.LateInterval.Start.InZone(zone).ToDateTimeOffset();
            findings.Add(new(
                FindingCodes.StartInSkippedHour, "/start", text,
                Message.Of("schedules.start-in-skipped-hour", ("zone", zone.Id), ("sent", text)), Message.Verbatim([Iso(later)])));
            return null;
        }

        var first = map.First().ToDateTimeOffset();
        if (map.Count == 2)
        {
            assumed.Add(new("start", Iso(first), Message.Of(
                "schedules.assumed-first-hour", ("zone", zone.Id), ("second", Iso(map.Last().ToDateTimeOffset())))));
        }

        return first;
    }

    private static string Iso(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}(:\d{2}(\.\d{1,7})?)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Local();
}
