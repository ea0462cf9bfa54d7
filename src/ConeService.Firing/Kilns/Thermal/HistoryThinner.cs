using System.Runtime.CompilerServices;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Kilns.Thermal;

/// <summary>Keeps the fewest moments of a curve, taken one at a time, whose chords leave it by no more than a tolerance.</summary>
/// <param name="tolerance">Tolerance, K.</param>
internal sealed class HistoryThinner(double tolerance)
{
    private readonly List<HeatPoint> kept = new(256);
    private HeatPoint last;
    private double lowest, highest;

    /// <summary>Takes the next moment; one at the same time as the last replaces nothing and is dropped.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Add(double hours, double kelvin)
    {
        var point = new HeatPoint(hours, kelvin);
        if (kept.Count == 0)
        {
            Keep(point);
            return;
        }

        if (!(hours > last.Hours)) return;
        var anchor = kept[^1];
        var slope = Slope(anchor, kelvin, hours);
        if (last.Hours > anchor.Hours && (slope < lowest || slope > highest))
        {
            Keep(last);
            anchor = last;
        }

        // The chords that pass this moment within the tolerance.
        lowest = Math.Max(lowest, Slope(anchor, kelvin - tolerance, hours));
        highest = Math.Min(highest, Slope(anchor, kelvin + tolerance, hours));
        last = point;
    }

    /// <summary>The moments kept, the last one always.</summary>
    public HeatHistory ToHistory()
    {
        if (last.Hours > kept[^1].Hours) kept.Add(last);
        return new(kept.ToArray());
    }

    private void Keep(HeatPoint point)
    {
        kept.Add(point);
        (last, lowest, highest) = (point, double.NegativeInfinity, double.PositiveInfinity);
    }

    private static double Slope(HeatPoint from, double kelvin, double hours) => (kelvin - from.Kelvin) / (hours - from.Hours);
}
