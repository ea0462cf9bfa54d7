using System.Globalization;
using ConeService.Contract.Problems;
using ConeService.Planning.Requests;
using NodaTime;
using NodaTime.Text;

namespace ConeService.Planning.Digest;

/// <summary>Reads moments of a request as minutes from the start of its horizon.</summary>
internal sealed class Moments
{
    private readonly List<PlanFinding> findings;
    private readonly DateTimeZone? zone;
    private Instant origin;

    /// <summary>Reads the zone.</summary>
    public Moments(string? timeZone, List<PlanFinding> findings)
    {
        this.findings = findings;
        if (string.IsNullOrWhiteSpace(timeZone)) return;
        zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(timeZone.Trim());
        if (zone is null) findings.Add(new(FindingCodes.TimeZoneUnknown, "/timeZone", timeZone));
        IsZoneUnknown = zone is null;
    }

    /// <summary>True when a zone was named that nobody knows: then moments without an offset are not judged.</summary>
    public bool IsZoneUnknown { get; }

    /// <summary>Sets what minutes are counted from.</summary>
    public void Begin(Instant from) => origin = from;

    /// <summary>The offset of a moment that was sent, where there is no zone.</summary>
    public Offset? SentOffset { get; private set; }

    /// <summary>A moment in minutes; null when it is left out or can't be read, which is a finding.</summary>
    public int? Minutes(string? sent, string pointer) => Read(sent, pointer) is { } moment ? Minutes(moment) : null;

    /// <summary>A moment in minutes, begun ones counted whole.</summary>
    public int Minutes(Instant moment) => (int)Math.Ceiling((moment - origin).TotalMinutes);

    /// <summary>Minutes as a moment of the zone.</summary>
    public DateTimeOffset At(int minutes) => (origin + Duration.FromMinutes(minutes)) switch
    {
        var moment when zone is not null => moment.InZone(zone).ToDateTimeOffset(),
        var moment => moment.WithOffset(SentOffset ?? Offset.Zero).ToDateTimeOffset(),
    };

    /// <summary>Minutes at which the clocks show a time of day, day by day.</summary>
    /// <param name="times">Times of day, rising.</param>
    /// <param name="until">Before when, min.</param>
    public IEnumerable<int> Daily(IReadOnlyList<LocalTime> times, int until)
    {
        var used = zone ?? DateTimeZone.ForOffset(SentOffset ?? Offset.Zero);
        for (var day = origin.InZone(used).Date; ; day = day.PlusDays(1))
        {
            foreach (var time in times)
            {
                var minutes = Minutes(used.AtLeniently(day + time).ToInstant());
                if (minutes >= until) yield break;
                if (minutes >= 0) yield return minutes;
            }
        }
    }

    /// <summary>A moment; null when it is left out or can't be read, which is a finding.</summary>
    public Instant? Read(string? sent, string pointer)
    {
        if (string.IsNullOrWhiteSpace(sent)) return null;
        var text = sent.Trim().Replace(' ', 'T');
        if (OffsetDateTimePattern.ExtendedIso.Parse(text) is { Success: true } whole) return Kept(whole.Value);
        if (OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mmo<G>").Parse(text) is { Success: true } shorter)
            return Kept(shorter.Value);
        var local = LocalDateTimePattern.ExtendedIso.Parse(text.Length == "2026-12-04T18:00".Length ? text + ":00" : text);
        if (!local.Success) findings.Add(new(FindingCodes.StartUnreadable, pointer, sent));
        else if (zone is not null) return Mapped(zone.MapLocal(local.Value), sent, pointer);
        else if (!IsZoneUnknown) findings.Add(new(FindingCodes.StartWithoutOffset, pointer, sent));
        return null;
    }

    private Instant Kept(OffsetDateTime moment)
    {
        SentOffset ??= moment.Offset;
        return moment.ToInstant();
    }

    // Of a time that comes twice the first; one that the clocks leave out is nobody's.
    private Instant? Mapped(NodaTime.TimeZones.ZoneLocalMapping map, string sent, string pointer)
    {
        if (map.Count > 0) return map.First().ToInstant();
        findings.Add(new(FindingCodes.StartInSkippedHour, pointer, sent));
        return null;
    }

    /// <summary>A number as text.</summary>
    public static string Text(double number) => number.ToString(CultureInfo.InvariantCulture);
}
