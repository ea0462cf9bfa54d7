namespace ConeService.Firing.Schedules.Fitting.Starting;

/// <summary>Times of a clock on a wall as moments.</summary>
internal static class LocalTime
{
    /// <summary>
    /// The moment at which the clocks of a zone show a time. Of a time that comes twice when clocks are put back the first; a time that is
    /// left out when they are put forward is the moment at which they are.
    /// </summary>
    public static DateTimeOffset At(TimeZoneInfo zone, DateTime local)
    {
        while (zone.IsInvalidTime(local)) local = local.AddMinutes(1);
        var offset = zone.IsAmbiguousTime(local) ? zone.GetAmbiguousTimeOffsets(local).Max() : zone.GetUtcOffset(local);
        return new(local, offset);
    }
}
