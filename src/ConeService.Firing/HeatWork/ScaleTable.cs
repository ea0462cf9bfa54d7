using System.Numerics;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>
/// Follows histories of thousands of pieces with many cones side by side, by a table of their curves; the order of time is
/// kept. Error of a ramp, a hold and what lies between below 1e-9 of the progress, for every curve of every chart
/// (ScaleTableTests).
/// </summary>
internal sealed class ScaleTable
{
    /// <summary>Coldest temperature that is followed, °C.</summary>
    public const int ColdestCelsius = CurveTable.ColdestCelsius;

    /// <summary>Hottest temperature that is followed, °C.</summary>
    public const int HottestCelsius = CurveTable.HottestCelsius;

    private const double Flat = 1e-4;

    private readonly BendingCurve[] curves;
    private readonly CurveTable table;

    /// <summary>Tabulates the curves.</summary>
    public ScaleTable(IEnumerable<BendingCurve> curves)
    {
        this.curves = [.. curves];
        table = new(this.curves);
    }

    /// <summary>Progress of every cone, in the order of the curves, and when each went down.</summary>
    /// <param name="history">The firing, within the grid.</param>
    public (double[] Progress, double?[] DownAtHours) Follow(HeatHistory history)
    {
        var points = history.Points;
        var width = table.Width;
        var sum = new double[width];
        var lost = new double[width];
        var threshold = new double[width];
        Array.Fill(threshold, double.PositiveInfinity);
        Array.Fill(threshold, HeatIntegral.Down, 0, curves.Length);
        var (previous, current) = (new double[width], new double[width]);
        var down = new double?[curves.Length];
        var floor = table.Floor(history);
        var previousKelvin = double.NaN;
        for (var i = 1; i < points.Length; i++)
        {
            Patience.Check();
            var (rise, hours) = (points[i].Kelvin - points[i - 1].Kelvin, points[i].Hours - points[i - 1].Hours);
            var flat = Math.Abs(rise) < Flat;
            if (flat)
            {
                table.BendRates(0.5 * (points[i].Kelvin + points[i - 1].Kelvin), floor, current);
            }
            else
            {
                if (previousKelvin != points[i - 1].Kelvin) table.Works(points[i - 1].Kelvin, floor, previous);
                table.Works(points[i].Kelvin, floor, current);
            }

            var factor = flat ? hours : hours / rise;
            var hottest = CurveTable.Row(Math.Max(points[i].Kelvin, points[i - 1].Kelvin));
            for (var at = 0; at < width; at += Vector<double>.Count)
            {
                if (floor.IsBelow(hottest, at)) continue;
                // Kahan's compensated sum, all lanes at once.
                var change = flat ? new Vector<double>(current, at) : new Vector<double>(current, at) - new Vector<double>(previous, at);
                var term = (change * factor) - new Vector<double>(lost, at);
                var before = new Vector<double>(sum, at);
                var after = before + term;
                (after - before - term).CopyTo(lost, at);
                after.CopyTo(sum, at);
                if (!Vector.GreaterThanOrEqualAny(after, new Vector<double>(threshold, at))) continue;
                for (var lane = at; lane < at + Vector<double>.Count; lane++)
                {
                    if (sum[lane] < threshold[lane]) continue;
                    threshold[lane] = double.PositiveInfinity;
                    down[lane] = HeatIntegral.DownWithin(curves[lane], points[i - 1], points[i], before[lane - at], sum[lane]);
                }
            }

            if (flat) continue;
            (previous, current) = (current, previous);
            previousKelvin = points[i].Kelvin;
        }

        return (sum[..curves.Length], down);
    }

    /// <summary>
    /// Progress when every curve is steeper or flatter: K′ = 60·(K/60)^a, all through the same end point at 60 °C/h.
    /// From a histogram, for the share of the uncertainty that the slopes have.
    /// </summary>
    public double[] FollowSteeper(ResidenceHistogram histogram, double exponent)
    {
        var progress = new double[table.Width];
        foreach (var (kelvin, hours) in histogram.Bins().Patiently()) table.AddSteeper(kelvin, hours, exponent, progress);
        return progress[..curves.Length];
    }
}
