namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>A fall at the end of a log that the rest of the programme does not ask for.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="Lowest">The lowest since.</param>
internal sealed record Interruption(HeatPoint From, HeatPoint Lowest)
{
    // Less is the overshoot of a controller, or the end of a climb that it rounds off.
    private const double LeastKelvin = 20;
    private const double NearPeakKelvin = 2;
    private const double LeastHours = 1.0 / 6;

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

    /// <summary>How the kiln cools by itself, as the fall shows: its first quarter, in which the air of the chamber comes down to
    /// walls and ware, is left out.</summary>
    /// <param name="log">The log.</param>
    /// <param name="roomKelvin">Temperature of the room, K.</param>
    /// <returns>Null where the fall is too short to tell.</returns>
    public CoolDown.Natural? Cooling(HeatHistory log, double roomKelvin)
    {
        var hours = Lowest.Hours - From.Hours;
        if (hours < LeastHours || Lowest.Kelvin <= roomKelvin + LeastKelvin) return null;
        var points = log.Points;
        var first = points.Length - 1;
        while (points[first].Hours > From.Hours + (hours / 4)) first--;
        var (high, way) = (points[first].Kelvin - roomKelvin, Lowest.Hours - points[first].Hours);
        var fall = Math.Log(high / (Lowest.Kelvin - roomKelvin));
        return fall > 0 ? new(Math.Clamp(way / fall, 0.1, 500), roomKelvin) : null;
    }
}
