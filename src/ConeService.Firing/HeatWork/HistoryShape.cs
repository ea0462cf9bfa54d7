namespace ConeService.Firing.HeatWork;

/// <summary>Rates and times that one reads off a history.</summary>
internal static class HistoryShape
{
    /// <summary>
    /// Mean rate over the last 100 K of the climb, K/h; null when the history does not climb that far. The 100 K end
    /// 1 K below the peak, so that a soak or the meter's flicker at the top does not count as climbing.
    /// </summary>
    public static double? RateOverLast100(HeatHistory history) => RateBetween(history, history.Peak.Kelvin - 101, history.Peak.Kelvin - 1);

    /// <summary>Mean rate of the last climb from one temperature to a higher one, K/h; null when it is not there.</summary>
    public static double? RateBetween(HeatHistory history, double from, double to)
    {
        var points = history.Points;
        double? start = null;
        for (var i = 1; i < points.Length; i++)
        {
            if (points[i - 1].Kelvin <= from && points[i].Kelvin > from) start = Crossing(points[i - 1], points[i], from);
            if (start is { } s && points[i].Kelvin >= to) return (to - from) / (Crossing(points[i - 1], points[i], to) - s);
        }

        return null;
    }

    /// <summary>Mean rate over <paramref name="width"/> K about a temperature when it was last cooled through, K/h, positive;
    /// null when it was not.</summary>
    public static double? CoolingThrough(HeatHistory history, double kelvin, double width)
    {
        var points = history.Points;
        double? start = null, rate = null;
        for (var i = 1; i < points.Length; i++)
        {
            var (high, low) = (kelvin + (width / 2), kelvin - (width / 2));
            if (points[i - 1].Kelvin >= high && points[i].Kelvin < high) start = Crossing(points[i - 1], points[i], high);
            if (start is { } s && points[i].Kelvin <= low)
            {
                rate = width / (Crossing(points[i - 1], points[i], low) - s);
                start = null;
            }
        }

        return rate;
    }

    /// <summary>Time spent above a temperature, h.</summary>
    public static double HoursAbove(HeatHistory history, double kelvin)
    {
        var points = history.Points;
        var sum = default(CompensatedSum);
        for (var i = 1; i < points.Length; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            if (a.Kelvin <= kelvin && b.Kelvin <= kelvin) continue;
            var from = a.Kelvin >= kelvin ? a.Hours : Crossing(a, b, kelvin);
            var to = b.Kelvin >= kelvin ? b.Hours : Crossing(a, b, kelvin);
            sum.Add(to - from);
        }

        return sum.Value;
    }

    private static double Crossing(HeatPoint a, HeatPoint b, double kelvin) =>
        a.Kelvin == b.Kelvin ? b.Hours : a.Hours + ((kelvin - a.Kelvin) / (b.Kelvin - a.Kelvin) * (b.Hours - a.Hours));
}
