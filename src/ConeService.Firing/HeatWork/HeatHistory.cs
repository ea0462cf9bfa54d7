using ConeService.Contract.HeatWork;
using ConeService.Contract.Quantities;

namespace ConeService.Firing.HeatWork;

/// <summary>What a firing did or will do: a temperature that runs straight from each moment to the next. Immutable.</summary>
internal sealed class HeatHistory
{
    private readonly ReadOnlyMemory<HeatPoint> points;
    private ResidenceHistogram? residence;

    /// <summary>Takes the moments over without copying them; the caller must not change them afterwards.</summary>
    /// <param name="points">At least two moments, in time order, no two at the same time; hours and kelvin finite, kelvin above 0.</param>
    /// <exception cref="ArgumentException">The moments are too few, out of order, or not finite.</exception>
    public HeatHistory(ReadOnlyMemory<HeatPoint> points)
    {
        if (points.Length < 2) throw new ArgumentException("A history needs two moments.", nameof(points));
        this.points = points;
        var span = points.Span;
        var (previous, peak) = (double.NegativeInfinity, 0);
        for (var i = 0; i < span.Length; i++)
        {
            if (!(span[i].Hours > previous) || !double.IsFinite(span[i].Hours) || !(span[i].Kelvin > 0) || !double.IsFinite(span[i].Kelvin))
            {
                throw new ArgumentException($"Moment {i} is out of order or not a temperature.", nameof(points));
            }

            previous = span[i].Hours;
            if (span[i].Kelvin > span[peak].Kelvin) peak = i;
        }

        Peak = span[peak];
    }

    /// <summary>The moments, in time order.</summary>
    public ReadOnlySpan<HeatPoint> Points => points.Span;

    /// <summary>The first moment of the highest temperature.</summary>
    public HeatPoint Peak { get; }

    /// <summary>The first moment.</summary>
    public HeatPoint Start => points.Span[0];

    /// <summary>The last moment.</summary>
    public HeatPoint End => points.Span[^1];

    /// <summary>How long it stayed in each kelvin; counted once.</summary>
    public ResidenceHistogram Residence => residence ??= new(this);

    /// <summary>The firing as a line to be drawn.</summary>
    public FiringCurve ToCurve()
    {
        var curve = new CurvePoint[points.Length];
        for (var i = 0; i < curve.Length; i++) curve[i] = new(Points[i].Hours, Points[i].Kelvin - Temperature.KelvinAtZero);
        return new(curve);
    }

    /// <summary>Time from the first moment to the last, h.</summary>
    public double DurationHours => End.Hours - Start.Hours;
}
