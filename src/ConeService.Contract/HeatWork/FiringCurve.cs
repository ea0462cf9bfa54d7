namespace ConeService.Contract.HeatWork;

/// <summary>A moment of a firing; between two moments the temperature runs straight.</summary>
/// <param name="Hours">Time since the start of the history, h.</param>
/// <param name="Celsius">Temperature, °C.</param>
public readonly record struct CurvePoint(double Hours, double Celsius);

/// <summary>A firing as a line to be drawn: at least two moments, in time order.</summary>
/// <param name="Points">The moments.</param>
public sealed record FiringCurve(IReadOnlyList<CurvePoint> Points)
{
    /// <summary>The first moment.</summary>
    public CurvePoint Start => Points[0];

    /// <summary>From the first moment to the last, h.</summary>
    public double DurationHours => Points[^1].Hours - Points[0].Hours;

    /// <summary>Highest temperature, °C.</summary>
    public double PeakCelsius => Points.Max(p => p.Celsius);

    /// <summary>Temperature at a moment, °C; outside the curve that of its nearer end.</summary>
    /// <param name="hours">The moment, h.</param>
    public double CelsiusAt(double hours)
    {
        if (hours <= Points[0].Hours) return Points[0].Celsius;
        if (hours >= Points[^1].Hours) return Points[^1].Celsius;
        var (low, high) = (0, Points.Count - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Points[middle].Hours <= hours) low = middle;
            else high = middle;
        }

        var share = (hours - Points[low].Hours) / (Points[high].Hours - Points[low].Hours);
        return Points[low].Celsius + (share * (Points[high].Celsius - Points[low].Celsius));
    }
}
