using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>A firing programme: segments from a start temperature, then, where stated, the cooling.</summary>
/// <param name="StartKelvin">Temperature at the start, K.</param>
/// <param name="Segments">The segments, in order; at least one.</param>
/// <param name="FullSpeedKelvinPerHour">What “as fast as possible” is taken to be, K/h.</param>
/// <param name="Cooling">The cooling after the last segment; null: the history ends there.</param>
internal sealed record HeatProgramme(
    double StartKelvin, IReadOnlyList<HeatSegment> Segments, double FullSpeedKelvinPerHour, CoolDown? Cooling = null)
{
    /// <summary>The history of a kiln that follows the programme exactly.</summary>
    /// <exception cref="ArgumentException">The programme does nothing: it neither moves nor holds.</exception>
    public HeatHistory ToHistory() => new(Moments().ToArray());

    /// <summary>True when it moves or holds.</summary>
    public bool DoesSomething => Moments().Count > 1;

    /// <summary>Progress of a cone through the programme; 0 when it neither moves nor holds.</summary>
    public double Progress(BendingCurve curve) =>
        Moments() is { Count: > 1 } moments ? HeatIntegral.Progress(curve, new(moments.ToArray())) : 0;

    /// <summary>
    /// Index of the segment that reaches the highest target; the last of them when several do. It is the one that
    /// inverse questions change.
    /// </summary>
    public int PeakSegment
    {
        get
        {
            var best = 0;
            for (var i = 1; i < Segments.Count; i++)
            {
                if (Segments[i].TargetKelvin >= Segments[best].TargetKelvin) best = i;
            }

            return best;
        }
    }

    /// <summary>The same programme with one segment changed.</summary>
    public HeatProgramme With(int segment, HeatSegment changed) =>
        this with { Segments = [.. Segments.Select((s, i) => i == segment ? changed : s)] };

    private List<HeatPoint> Moments()
    {
        List<HeatPoint> points = [new(0, StartKelvin)];
        foreach (var segment in Segments)
        {
            Patience.Check();
            var last = points[^1];
            var way = Math.Abs(segment.TargetKelvin - last.Kelvin);
            if (way > 0) points.Add(new(last.Hours + (way / (segment.RateKelvinPerHour ?? FullSpeedKelvinPerHour)), segment.TargetKelvin));
            // A hold too short to move the clock does nothing.
            if (points[^1].Hours + segment.HoldHours > points[^1].Hours)
            {
                points.Add(new(points[^1].Hours + segment.HoldHours, segment.TargetKelvin));
            }
        }

        if (Cooling is not null) points.AddRange(Cooling.After(points[^1]));
        return points;
    }
}
