namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>A fall at the end of a log that the rest of the programme does not ask for.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="Lowest">The lowest since.</param>
internal sealed record Interruption(HeatPoint From, HeatPoint Lowest)
{
    // Less is the overshoot of a controller, or the end of a climb that it rounds off.
    private const double LeastKelvin = 20;
    private const double NearPeakKelvin = 2;

    /// <summary>Finds it.</summary>
    /// <param name="log">The log.</param>
    /// <param name="rest">What is left of the programme; null when nothing is.</param>
    /// <returns>Null where the log ends near its highest, or falls as the programme wants it to.</returns>
    public static Interruption? Find(HeatHistory log, IReadOnlyList<HeatSegment>? rest)
    {
        if (log.Peak.Kelvin - log.End.Kelvin < LeastKelvin) return null;
        if (rest is not null && !rest.Any(s => s.TargetKelvin > log.End.Kelvin + LeastKelvin)) return null;
        var points = log.Points;
        var from = points.Length - 1;
        while (points[from].Kelvin < log.Peak.Kelvin - NearPeakKelvin) from--;
        var lowest = from;
        for (var i = from; i < points.Length; i++)
        {
            if (points[i].Kelvin <= points[lowest].Kelvin) lowest = i;
        }

        return new(points[from], points[lowest]);
    }
}
