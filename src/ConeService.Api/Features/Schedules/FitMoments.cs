using System.Globalization;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using NodaTime;

namespace ConeService.Api.Features.Schedules;

/// <summary>Moments of a firing by the clock of its place.</summary>
internal static class FitMoments
{
    /// <summary>A moment; null without a start.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="minutes">Minutes from the start.</param>
    public static DateTimeOffset? At(ScheduleFit fit, double minutes)
    {
        if (fit.Times.Start is not { } start) return null;
        var moment = start.AddMinutes(minutes);
        return Zone(fit) is { } zone ? Instant.FromDateTimeOffset(moment).InZone(zone).ToDateTimeOffset() : moment;
    }

    /// <summary>The zone of the firing; null where an offset alone was sent.</summary>
    public static DateTimeZone? Zone(ScheduleFit fit) =>
        fit.Operation.TimeZone is { } id ? DateTimeZoneProviders.Tzdb[id] : null;

    /// <summary>A time as it is said: “Fri 4 Dec 18:00”, or without a start “after 3 h 20 min”.</summary>
    public static string Words(ScheduleFit fit, double minutes) => At(fit, minutes) is { } time
        ? time.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture)
        : $"after {QuantityFormat.Duration(minutes)}";

    /// <summary>The same, short: “Fri 18:00”, or “3.3 h”.</summary>
    public static string Short(ScheduleFit fit, double minutes) => At(fit, minutes) is { } time
        ? time.ToString("ddd HH:mm", CultureInfo.InvariantCulture)
        : (minutes / 60).ToString("0.0", CultureInfo.InvariantCulture) + " h";

    /// <summary>From one moment to another: “Fri 18:00 to 20:30”.</summary>
    public static string Span(ScheduleFit fit, double from, double to) => (At(fit, from), At(fit, to)) switch
    {
        ({ } first, { } last) => Short(fit, from) + " to "
            + (first.Date == last.Date ? last.ToString("HH:mm", CultureInfo.InvariantCulture) : Short(fit, to)),
        _ => FormattableString.Invariant($"{from / 60:0.0} to {to / 60:0.0} h"),
    };
}
