using NodaTime;
using NodaTime.TimeZones;

namespace ConeService.Firing.Schedules.Fitting.Starting;

/// <summary>Times of a clock on a wall as moments.</summary>
internal static class LocalTime
{
    private static readonly ZoneLocalMappingResolver Resolver =
        Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnStartOfIntervalAfter);

    /// <summary>
    /// The moment at which the clocks of a zone show a time. Of a time that comes twice when clocks are put back the first; a time that is
    /// left out when they are put forward is the moment at which they are.
    /// </summary>
    public static DateTimeOffset At(DateTimeZone zone, DateTime local) =>
        zone.ResolveLocal(LocalDateTime.FromDateTime(local), Resolver).ToDateTimeOffset();
}
