using System.Numerics;
using ConeService.Contract.Quantities;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>
/// K and k of many cones on a grid of whole degrees Celsius, for histories of thousands of pieces: all cones are
/// followed side by side, and the order of time is kept. Between grid points a cubic through K and k; the printed
/// values are whole degrees, so the kinks of the curves lie on the grid. Error of a steady ramp below 1e-5 of the
/// progress, of a hold below 1e-4 (tested); costs some 2 MB a chart.
/// </summary>
internal sealed class ScaleTable
{
    /// <summary>Coldest temperature of the grid, °C.</summary>
    public const int ColdestCelsius = -30;

    /// <summary>Hottest temperature of the grid, °C.</summary>
    public const int HottestCelsius = 1500;

    private const double Zero = Temperature.KelvinAtZero;
    private const double Flat = 1e-4;

    private readonly BendingCurve[] curves;
    private readonly int width;
    private readonly double[] work;
    private readonly double[] rate;

    /// <summary>Tabulates the curves.</summary>
    public ScaleTable(IEnumerable<BendingCurve> curves)
    {
        this.curves = [.. curves];
        var lanes = Vector<double>.Count;
        width = (this.curves.Length + lanes - 1) / lanes * lanes;
        var rows = HottestCelsius - ColdestCelsius + 2;
        work = new double[rows * width];
        rate = new double[rows * width];
        for (var row = 0; row < rows; row++)
        {
            var kelvin = ColdestCelsius + row + Zero;
            for (var i = 0; i < this.curves.Length; i++)
            {
                var k = this.curves[i].K(kelvin);
                work[(row * width) + i] = k;
                rate[(row * width) + i] = k * this.curves[i].Slope(kelvin);
            }
        }
    }

    /// <summary>Progress of every cone, in the order of the curves, and when each went down.</summary>
    /// <param name="history">The firing, within the grid.</param>
    public (double[] Progress, double?[] DownAtHours) Follow(HeatHistory history)
    {
        var points = history.Points;
        var sum = new double[width];
        var lost = new double[width];
        var threshold = Enumerable.Repeat(HeatIntegral.Down, curves.Length).Concat(Enumerable.Repeat(double.PositiveInfinity, width - curves.Length)).ToArray();
        var (previous, current) = (new double[width], new double[width]);
        var down = new double?[curves.Length];
        var previousKelvin = double.NaN;
        for (var i = 1; i < points.Length; i++)
        {
            var (rise, hours) = (points[i].Kelvin - points[i - 1].Kelvin, points[i].Hours - points[i - 1].Hours);
            var flat = Math.Abs(rise) < Flat;
            if (flat) InterpolateRate(0.5 * (points[i].Kelvin + points[i - 1].Kelvin), current);
            else
            {
                if (previousKelvin != points[i - 1].Kelvin) Interpolate(points[i - 1].Kelvin, previous);
                Interpolate(points[i].Kelvin, current);
            }

            var factor = flat ? hours : hours / rise;
            for (var at = 0; at < width; at += Vector<double>.Count)
            {
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
        var progress = new double[curves.Length];
        var (k, r) = (new double[width], new double[width]);
        foreach (var (kelvin, hours) in histogram.Bins())
        {
            Interpolate(kelvin, k);
            InterpolateRate(kelvin, r);
            for (var i = 0; i < progress.Length; i++)
            {
                // Far below its range K is too small to be divided, and the cubic may fall below 0: no work is done there.
                // In logarithms, since the power of what was rounded to 0 would be infinite.
                if (k[i] > 0 && r[i] > 0) progress[i] += hours * exponent * r[i] * Math.Exp((exponent - 1) * (Math.Log(k[i]) - HeatMargin.LogRate));
            }
        }

        return progress;
    }

    private void Interpolate(double kelvin, double[] into)
    {
        var (row, u) = Place(kelvin);
        double u2 = u * u, u3 = u2 * u;
        Combine(row, (2 * u3) - (3 * u2) + 1, u3 - (2 * u2) + u, (3 * u2) - (2 * u3), u3 - u2, into);
    }

    private void InterpolateRate(double kelvin, double[] into)
    {
        var (row, u) = Place(kelvin);
        var chord = 6 * u * (1 - u);
        Combine(row, -chord, (3 * u * u) - (4 * u) + 1, chord, (3 * u * u) - (2 * u), into);
    }

    private void Combine(int row, double work0, double rate0, double work1, double rate1, double[] into)
    {
        var (low, high) = (row * width, (row + 1) * width);
        for (var at = 0; at < width; at += Vector<double>.Count)
        {
            ((new Vector<double>(work, low + at) * work0) + (new Vector<double>(rate, low + at) * rate0)
                + (new Vector<double>(work, high + at) * work1) + (new Vector<double>(rate, high + at) * rate1)).CopyTo(into, at);
        }
    }

    private static (int Row, double Share) Place(double kelvin)
    {
        var x = kelvin - Zero - ColdestCelsius;
        var row = (int)x;
        return (row, x - row);
    }
}
