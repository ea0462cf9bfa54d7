using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Requests;

namespace ConeService.Contract.Schedules;

/// <summary>When the peak of a firing shall come, so that somebody is there.</summary>
/// <param name="From">Not before: date and time, with offset or beside a timeZone.</param>
/// <param name="To">Not after.</param>
[Needs(nameof(From), nameof(To))]
public sealed record PeakWindow(
    [property: RegularExpression(StartMoments.Pattern)] string? From = null,
    [property: RegularExpression(StartMoments.Pattern)] string? To = null);

/// <summary>Hours of the day at which energy has another price. Of periods that overlap the first one counts.</summary>
/// <param name="From">When it begins, by the clock of the zone: 22:00.</param>
/// <param name="To">When it ends, 00:00 to 24:00; not later than <paramref name="From"/>: on the next day.</param>
/// <param name="Days">Days on which it begins; left out: every day.</param>
/// <param name="PerKilowattHour">Price of a kWh then.</param>
[Needs(nameof(From), nameof(To), nameof(PerKilowattHour))]
public sealed record TariffPeriod(
    [property: RegularExpression(StartMoments.ClockPattern)] string? From = null,
    [property: RegularExpression(StartMoments.ClockPattern)] string? To = null,
    [property: WordsOf(typeof(Weekday)), Items(1, 7)] IReadOnlyList<SentText>? Days = null,
    [property: Range(0.0, 1_000_000.0)] double? PerKilowattHour = null);

/// <summary>A day of the week.</summary>
public enum Weekday
{
    /// <summary>Monday.</summary>
    Monday,

    /// <summary>Tuesday.</summary>
    Tuesday,

    /// <summary>Wednesday.</summary>
    Wednesday,

    /// <summary>Thursday.</summary>
    Thursday,

    /// <summary>Friday.</summary>
    Friday,

    /// <summary>Saturday.</summary>
    Saturday,

    /// <summary>Sunday.</summary>
    Sunday,
}

/// <summary>How moments and times of the clock are written.</summary>
public static class StartMoments
{
    /// <summary>Most periods of a tariff.</summary>
    public const int MostPeriods = 24;

    /// <summary>A date and a time; with its offset from UTC, or beside a time zone without.</summary>
    public const string Pattern =
        @"^\s*[0-9]{4}-[0-9]{2}-[0-9]{2}[T ][0-9]{2}:[0-9]{2}(:[0-9]{2}(\.[0-9]{1,7})?)?(Z|z|[+-][0-9]{2}:[0-9]{2})?\s*$";

    /// <summary>A time of the clock.</summary>
    public const string ClockPattern = "^(([01][0-9]|2[0-3]):[0-5][0-9]|24:00)$";
}
