using NodaTime;

namespace ConeService.Firing.Schedules.Fitting.Starting;

/// <summary>What a kWh costs at which hours of which days.</summary>
/// <param name="Base">Outside the periods.</param>
/// <param name="Periods">The periods; of those that overlap the first one counts.</param>
internal sealed record TariffClock(double Base, IReadOnlyList<TariffHours> Periods)
{
    /// <summary>True when the days of the week differ.</summary>
    public bool IsWeekly => Periods.Any(p => p.Days is not null);

    /// <summary>The prices in order from a moment on, without a gap; each counts from its minute to that of the next.</summary>
    /// <param name="zone">The zone of the clock.</param>
    /// <param name="from">Minute 0, a whole minute.</param>
    /// <param name="minutes">Up to this minute.</param>
    public IReadOnlyList<(int Minute, double Price)> Prices(DateTimeZone zone, DateTimeOffset from, int minutes)
    {
        var spans = new List<(int From, int To, double Price)>();
        int Minute(DateTime local) => (int)Math.Round((LocalTime.At(zone, local) - from).TotalMinutes);
        var (first, last) = (
            MomentReader.In(zone, from).Date.AddDays(-1), MomentReader.In(zone, from.AddMinutes(minutes)).Date);
        foreach (var period in Periods)
        {
            for (var day = first; day <= last; day = day.AddDays(1))
            {
                if (period.Days?.Contains(day.DayOfWeek) == false) continue;
                var end = period.To > period.From ? day : day.AddDays(1);
                spans.Add((Minute(day + period.From), Minute(end + period.To), period.Price));
            }
        }

        var edges = spans.SelectMany(s => new[] { s.From, s.To }).Append(0)
            .Where(m => m >= 0 && m < minutes).Distinct().Order().ToList();
        // Spans stand in the order of the periods, so that the first that holds an edge is the one that counts.
        return [.. edges.Select(m => (m, spans.Where(s => s.From <= m && m < s.To).Select(s => s.Price).FirstOrDefault(Base)))];
    }
}

/// <summary>Hours with a price of their own.</summary>
/// <param name="From">From, since midnight.</param>
/// <param name="To">To, since midnight; not later than <paramref name="From"/>: on the next day.</param>
/// <param name="Days">Days on which they begin; null: every day.</param>
/// <param name="Price">Price of a kWh.</param>
internal sealed record TariffHours(TimeSpan From, TimeSpan To, IReadOnlySet<DayOfWeek>? Days, double Price);
