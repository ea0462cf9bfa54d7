using System.Globalization;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using NodaTime;
using NodaTime.Text;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// Reads moments: date and time with an offset, or beside a time zone without. An hour that the clocks leave out is no moment, and of one
/// that comes twice the first is taken and said. Zones are compiled in, so that an image without their files has them.
/// </summary>
internal static partial class MomentReader
{
    /// <summary>How a moment may be written.</summary>
    public static readonly IReadOnlyList<string> Examples = ["2026-12-04T18:00:00+01:00", "2026-12-04T17:00:00Z"];

    private const string OfTheStart = "/start";
    private const int FirstYear = 1970;
    private const int LastYear = 2200;

    /// <summary>The moment of a member, by the clock of the zone; null when it is left out or unreadable, which is a finding.</summary>
    /// <param name="sent">The text.</param>
    /// <param name="field">Pointer of the member.</param>
    /// <param name="zone">The zone; null: the offset is needed.</param>
    /// <param name="assumed">Which hour was taken where it comes twice.</param>
    /// <param name="findings">Where findings go.</param>
    public static DateTimeOffset? Read(
        string? sent, string field, DateTimeZone? zone, List<Assumption> assumed, List<Finding> findings)
    {
        if (string.IsNullOrWhiteSpace(sent)) return null;
        var text = sent.Trim();
        if (!Written().IsMatch(text)) findings.Add(WithoutForm(sent, text, field));
        else if (Offset().IsMatch(text))
        {
            if (DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment) && IsNear(moment.Year))
                return zone is null ? moment : In(zone, moment);
            findings.Add(OfNoEra(sent, field));
        }
        else if (zone is null) findings.Add(WithoutOffset(sent, text, field));
        else
        {
            var read = LocalDateTimePattern.ExtendedIso.Parse(text.Replace(' ', 'T') + (text.Length == 16 ? ":00" : ""));
            if (read.Success && IsNear(read.Value.Year)) return InZone(read.Value, sent, field, zone, assumed, findings);
            findings.Add(OfNoEra(sent, field));
        }

        return null;
    }

    /// <summary>A moment as the clocks of a zone show it.</summary>
    public static DateTimeOffset In(DateTimeZone zone, DateTimeOffset moment) =>
        Instant.FromDateTimeOffset(moment).InZone(zone).ToDateTimeOffset();

    private static bool IsNear(int year) => year is >= FirstYear and <= LastYear;

    private static DateTimeOffset? InZone(
        LocalDateTime local, string sent, string field, DateTimeZone zone, List<Assumption> assumed, List<Finding> findings)
    {
        var map = zone.MapLocal(local);
        if (map.Count == 0)
        {
            var later = map.LateInterval.Start.InZone(zone).ToDateTimeOffset();
            findings.Add(new(
                FindingCodes.StartInSkippedHour, field, sent,
                Message.Of("schedules.start-in-skipped-hour", ("zone", zone.Id), ("sent", sent)), Message.Verbatim([Iso(later)])));
            return null;
        }

        var first = map.First().ToDateTimeOffset();
        if (map.Count == 2)
        {
            assumed.Add(new(field[1..], Iso(first), Message.Of(
                "schedules.assumed-first-hour", ("zone", zone.Id), ("second", Iso(map.Last().ToDateTimeOffset())))));
        }

        return first;
    }

    // A date alone is a moment without its time and its offset.
    private static Finding WithoutForm(string sent, string text, string field) => Date().IsMatch(text)
        ? WithoutOffset(sent, text, field)
        : new(
            FindingCodes.StartUnreadable, field, sent, Message.Of("schedules.start-unreadable", ("sent", sent)),
            Message.Verbatim(Examples));

    private static Finding WithoutOffset(string sent, string text, string field) => new(
        FindingCodes.StartWithoutOffset, field, sent,
        field == OfTheStart
            ? Message.Of("schedules.start-offset-missing")
            : Message.Of("schedules.moment-offset-missing", ("sent", sent)),
        Message.Verbatim([text + "+01:00", text + "Z"]), Message.Of("schedules.start-offset-mistake"));

    private static Finding OfNoEra(string sent, string field) => new(
        FindingCodes.StartUnreadable, field, sent, Message.Of("schedules.start-era", ("sent", sent)), Message.Verbatim([Examples[0]]));

    private static string Iso(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    [GeneratedRegex(StartMoments.Pattern, RegexOptions.CultureInvariant)]
    private static partial Regex Written();

    [GeneratedRegex("(Z|z|[+-][0-9]{2}:[0-9]{2})$", RegexOptions.CultureInvariant)]
    private static partial Regex Offset();

    [GeneratedRegex("^[0-9]{4}-[0-9]{2}-[0-9]{2}$", RegexOptions.CultureInvariant)]
    private static partial Regex Date();
}
