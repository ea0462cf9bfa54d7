using System.Globalization;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Firing.Reading;
using NodaTime;

namespace ConeService.Firing.Schedules.Fitting.Starting;

/// <summary>Reads what chooses the start of a firing, or prices it by the clock.</summary>
internal static partial class StartReader
{
    /// <summary>Reads it.</summary>
    /// <param name="request">The request.</param>
    /// <param name="clock">The start that was sent, and its zone.</param>
    /// <param name="now">Now, where it is known.</param>
    /// <param name="assumed">Where what was left out goes.</param>
    /// <param name="findings">Where findings go.</param>
    /// <returns>Null where there is nothing to choose and nothing to price by the clock.</returns>
    public static StartWish? Read(
        FitRequest request, FitClock clock, DateTimeOffset? now, List<Assumption> assumed, List<Finding> findings)
    {
        var count = findings.Count;
        var (start, named) = clock;
        var isFixed = !string.IsNullOrWhiteSpace(request.Start);
        if (isFixed) RefuseBesideStart(request, findings);
        var notBefore = MomentReader.Read(request.StartNotBefore, "/startNotBefore", named, assumed, findings);
        var finish = MomentReader.Read(request.FinishBy, "/finishBy", named, assumed, findings);
        var peak = Window(request.PeakBetween, named, assumed, findings);
        var hours = Periods(request.Tariff?.Periods, findings);
        if (request is { FinishBy: null, PeakBetween: null, StartNotBefore: null, Tariff.Periods: null or [] }
            || request is { FinishBy: null, PeakBetween: null, StartNotBefore: null, Tariff: null })
        {
            return null;
        }

        if (!isFixed && request.StartNotBefore is null) notBefore = Now(now, named, assumed, findings);
        if (findings.Count > count || (start ?? notBefore) is not { } from) return null;
        var zone = named ?? Fixed(new[] { start, finish, peak?.From, notBefore }.OfType<DateTimeOffset>().First().Offset);
        if (named is null && hours is not null)
            assumed.Add(new("timeZone", Named(zone), Message.Of("schedules.assumed-zone")));
        var tariff = hours is null || request.Tariff?.PerKilowattHour is not { } price ? null : new TariffClock(price, hours);
        return new(isFixed, from, finish, peak, tariff, zone);
    }

    private static DateTimeOffset? Now(DateTimeOffset? now, DateTimeZone? zone, List<Assumption> assumed, List<Finding> findings)
    {
        if (now is not { } known)
        {
            findings.Add(new(
                FindingCodes.MemberMissing, "/startNotBefore", null, Message.Of("schedules.not-before-missing"),
                Message.Verbatim(MomentReader.Examples)));
            return null;
        }

        var here = zone is null ? known : MomentReader.In(zone, known);
        var minute = Up(here);
        assumed.Add(new(
            "startNotBefore", minute.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture),
            Message.Of("schedules.assumed-now")));
        return minute;
    }

    /// <summary>The next whole minute.</summary>
    public static DateTimeOffset Up(DateTimeOffset moment) =>
        new((moment.Ticks + TimeSpan.TicksPerMinute - 1) / TimeSpan.TicksPerMinute * TimeSpan.TicksPerMinute, moment.Offset);

    private static DateTimeZone Fixed(TimeSpan offset) => DateTimeZone.ForOffset(Offset.FromTimeSpan(offset));

    private static string Named(DateTimeZone zone) => zone is { Id: not "UTC", MinOffset: var offset } && zone.MinOffset == zone.MaxOffset
        ? (offset < Offset.Zero ? "-" : "+") + offset.ToTimeSpan().ToString(@"hh\:mm", CultureInfo.InvariantCulture)
        : zone.Id;

    private static void RefuseBesideStart(FitRequest request, List<Finding> findings)
    {
        (object? Sent, string Field)[] choosing =
            [(request.FinishBy, "/finishBy"), (request.PeakBetween, "/peakBetween"), (request.StartNotBefore, "/startNotBefore")];
        findings.AddRange(choosing.Where(c => c.Sent is not null).Select(c => new Finding(
            FindingCodes.StartAmbiguous, c.Field, c.Sent as string, Message.Of("schedules.start-beside", ("member", c.Field[1..])),
            [Message.Of("schedules.start-or-choice")])));
    }

    private static (DateTimeOffset From, DateTimeOffset To)? Window(
        PeakWindow? sent, DateTimeZone? zone, List<Assumption> assumed, List<Finding> findings)
    {
        if (sent is null) return null;
        var members = new MemberReader(findings);
        if (sent.From is null) members.Missing("/peakBetween/from", Message.Verbatim(MomentReader.Examples));
        if (sent.To is null) members.Missing("/peakBetween/to", Message.Verbatim(MomentReader.Examples));
        var from = MomentReader.Read(sent.From, "/peakBetween/from", zone, assumed, findings);
        var to = MomentReader.Read(sent.To, "/peakBetween/to", zone, assumed, findings);
        if (from is null || to is null) return null;
        if (from <= to) return (from.Value, to.Value);
        findings.Add(new(
            FindingCodes.RangeInverted, "/peakBetween", sent.From, Message.Of("schedules.peak-window-inverted"),
            [Message.Of("schedules.from-before-to")]));
        return null;
    }

    private static List<TariffHours>? Periods(IReadOnlyList<TariffPeriod?>? sent, List<Finding> findings)
    {
        if (sent is null) return null;
        if (sent.Count is 0 or > StartMoments.MostPeriods)
        {
            findings.Add(new(
                sent.Count == 0 ? FindingCodes.EmptyRequest : FindingCodes.TooManyItems, "/tariff/periods", null,
                Message.Of("schedules.tariff-periods", ("count", sent.Count)),
                [Message.Of("schedules.tariff-periods-allowed", ("most", StartMoments.MostPeriods))]));
            return null;
        }

        var (members, hours) = (new MemberReader(findings), new List<TariffHours>());
        for (var i = 0; i < sent.Count; i++)
        {
            var (at, period) = (MemberReader.Item("/tariff/periods", i), sent[i] ?? new());
            var (from, to) = (Clock(period.From, at + "/from", members), Clock(period.To, at + "/to", members));
            var days = period.Days is null ? null : members.Words<Weekday>(period.Days, at + "/days");
            if (period.PerKilowattHour is not { } price) members.Missing(at + "/perKilowattHour", [Message.Of("schedules.price-allowed")]);
            else if (price is not (>= 0 and <= 1_000_000))
            {
                members.Add(new(
                    FindingCodes.NumberOutOfRange, at + "/perKilowattHour", RequestCheck.Text(price),
                    Message.Of("schedules.price-missing"), [Message.Of("schedules.price-allowed")]));
            }
            else if (from is not null && to is not null)
            {
                // The enum begins on Monday, that of .NET on Sunday.
                hours.Add(new(from.Value, to.Value, days?.Select(d => (DayOfWeek)(((int)d + 1) % 7)).ToHashSet(), price));
            }
        }

        return hours;
    }

    private static TimeSpan? Clock(string? sent, string field, MemberReader members)
    {
        if (sent is null)
        {
            members.Missing(field, Message.Verbatim(["22:00", "06:00"]));
            return null;
        }

        if (ClockTime().IsMatch(sent))
        {
            return new(
                int.Parse(sent.AsSpan(0, 2), NumberStyles.None, CultureInfo.InvariantCulture),
                int.Parse(sent.AsSpan(3, 2), NumberStyles.None, CultureInfo.InvariantCulture), 0);
        }

        members.Add(new(
            FindingCodes.ClockTimeUnreadable, field, sent, Message.Of("schedules.clock-time-unreadable", ("sent", sent)),
            Message.Verbatim(["22:00", "06:00", "24:00"])));
        return null;
    }

    [GeneratedRegex(StartMoments.ClockPattern, RegexOptions.CultureInvariant)]
    private static partial Regex ClockTime();
}
