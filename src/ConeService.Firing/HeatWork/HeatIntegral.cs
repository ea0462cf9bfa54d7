using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>
/// The work that a history does on one cone, I = ∫ k(T(t)) dt, in closed form piece by piece: a straight piece from
/// T₁ to T₂ in dt hours adds (K(T₂)−K(T₁))·dt/(T₂−T₁). The cone is down at I = 1. Heating, holding and cooling alike;
/// there is no step size. See docs/heat-work.md.
/// </summary>
internal static class HeatIntegral
{
    /// <summary>
    /// The cone counts as down from here on. A ramp to the printed end point must be just down, and the sum of its
    /// pieces is exact only to rounding; a billionth is less than a millionth of a kelvin.
    /// </summary>
    public const double Down = 1 - 1e-9;

    // Below this the difference of K loses digits, and Simpson's rule on k is exact to rounding (to 1e-10 on a piece that
    // holds a knot of the curve, where k has a kink).
    private const double NarrowKelvin = 1e-4;

    /// <summary>Progress of the cone over the whole history, from 0.</summary>
    public static double Progress(BendingCurve curve, HeatHistory history) => Progress(curve, history, out _);

    /// <summary>Progress over the whole history, and when the cone went down.</summary>
    /// <param name="curve">The cone.</param>
    /// <param name="history">The firing.</param>
    /// <param name="downAt">The moment, h since the time 0 of the history; null when the cone stayed up.</param>
    public static double Progress(BendingCurve curve, HeatHistory history, out double? downAt) =>
        Progress(curve, history, Down, out downAt);

    /// <summary>Progress over the whole history, and when it came to a mark.</summary>
    /// <param name="curve">The cone.</param>
    /// <param name="history">The firing.</param>
    /// <param name="mark">A progress, at most 1.</param>
    /// <param name="downAt">The moment, h since the time 0 of the history; null when it did not come so far.</param>
    public static double Progress(BendingCurve curve, HeatHistory history, double mark, out double? downAt)
    {
        downAt = null;
        var sum = default(CompensatedSum);
        var points = history.Points;
        var low = curve.K(points[0].Kelvin);
        for (var i = 1; i < points.Length; i++)
        {
            Patience.Check();
            var high = points[i].Kelvin == points[i - 1].Kelvin ? low : curve.K(points[i].Kelvin);
            var before = sum.Value;
            sum.Add(OfPiece(curve, points[i - 1].Kelvin, points[i].Kelvin, points[i].Hours - points[i - 1].Hours, low, high));
            if (downAt is null && sum.Value >= mark) downAt = DownWithin(curve, points[i - 1], points[i], before, sum.Value, mark);
            low = high;
        }

        return sum.Value;
    }

    /// <summary>Progress that one straight piece adds.</summary>
    /// <param name="curve">The cone.</param>
    /// <param name="from">Where it starts, K.</param>
    /// <param name="to">Where it ends, K.</param>
    /// <param name="hours">How long it lasts, h.</param>
    public static double OfPiece(BendingCurve curve, double from, double to, double hours) =>
        OfPiece(curve, from, to, hours, curve.K(from), curve.K(to));

    /// <summary>When a piece brings the progress to a mark, 1 unless another is named.</summary>
    /// <param name="curve">The cone.</param>
    /// <param name="from">Start of the piece.</param>
    /// <param name="to">End of the piece.</param>
    /// <param name="before">Progress before the piece, at most 1.</param>
    /// <param name="after">Progress after it.</param>
    /// <param name="mark">The progress asked for.</param>
    /// <returns>Hours since the time 0 of the history.</returns>
    internal static double DownWithin(BendingCurve curve, HeatPoint from, HeatPoint to, double before, double after, double mark = Down)
    {
        var (hours, rise) = (to.Hours - from.Hours, to.Kelvin - from.Kelvin);
        var share = (mark - before) / (after - before);
        if (Math.Abs(rise) >= NarrowKelvin)
        {
            // K at the moment: K(T₁) + (1 − I)·rate.
            var k = curve.K(from.Kelvin) + ((mark - before) * rise / hours);
            share = k > 0 ? (curve.Inverse(Math.Log(k)) - from.Kelvin) / rise : 1;
        }

        return from.Hours + (Math.Clamp(share, 0, 1) * hours);
    }

    private static double OfPiece(BendingCurve curve, double from, double to, double hours, double kFrom, double kTo)
    {
        var rise = to - from;
        if (rise == 0) return hours * kFrom * curve.Slope(from);
        return Math.Abs(rise) >= NarrowKelvin
            ? (kTo - kFrom) / rise * hours
            : hours * ((kFrom * curve.Slope(from)) + (4 * curve.BendRate(0.5 * (from + to))) + (kTo * curve.Slope(to))) / 6;
    }
}
