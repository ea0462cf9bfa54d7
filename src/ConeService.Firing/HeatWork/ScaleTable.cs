using System.Numerics;
using ConeService.Contract.Quantities;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>
/// ln K and its slope of many cones on a grid of whole degrees Celsius, for histories of thousands of pieces: all cones are
/// followed side by side, and the order of time is kept. Between grid points a cubic through ln K and its slope; since a
/// curve is itself a cubic of ln K between its knots, it comes back as it is when its knots lie on the grid. Each curve has
/// its own phase of the grid for that: a borrowed one is moved by a fraction of a degree. Error of a ramp, a hold and what
/// lies between below 1e-9 of the progress, for every curve of every chart (ScaleTableTests). Costs 1 MB a chart.
/// </summary>
internal sealed class ScaleTable
{
    /// <summary>Coldest temperature of the grid, °C.</summary>
    public const int ColdestCelsius = -30;

    /// <summary>Hottest temperature of the grid, °C.</summary>
    public const int HottestCelsius = 1500;

    private const double Zero = Temperature.KelvinAtZero;
    private const double Flat = 1e-4;

    // Beyond it K is no number any more; far below its range a cone does no work.
    private const double MostLog = 690;

    private readonly BendingCurve[] curves;
    private readonly int width;
    private readonly double[] logs;
    private readonly double[] slopes;
    private readonly double[] phases;

    /// <summary>Tabulates the curves.</summary>
    public ScaleTable(IEnumerable<BendingCurve> curves)
    {
        this.curves = [.. curves];
        var lanes = Vector<double>.Count;
        width = (this.curves.Length + lanes - 1) / lanes * lanes;
        // One point before the grid and one behind, for the curves whose points lie between whole degrees.
        var rows = HottestCelsius - ColdestCelsius + 3;
        logs = new double[rows * width];
        slopes = new double[rows * width];
        phases = new double[width];
        for (var i = 0; i < this.curves.Length; i++) phases[i] = this.curves[i].KnotPhase;
        for (var row = 0; row < rows; row++)
        {
            for (var i = 0; i < this.curves.Length; i++)
            {
                var kelvin = ColdestCelsius + row - 1 + phases[i] + Zero;
                logs[(row * width) + i] = this.curves[i].LogK(kelvin);
                slopes[(row * width) + i] = this.curves[i].Slope(kelvin);
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
        var threshold = new double[width];
        Array.Fill(threshold, double.PositiveInfinity);
        Array.Fill(threshold, HeatIntegral.Down, 0, curves.Length);
        var (previous, current) = (new double[width], new double[width]);
        var down = new double?[curves.Length];
        var previousKelvin = double.NaN;
        for (var i = 1; i < points.Length; i++)
        {
            var (rise, hours) = (points[i].Kelvin - points[i - 1].Kelvin, points[i].Hours - points[i - 1].Hours);
            var flat = Math.Abs(rise) < Flat;
            if (flat)
            {
                BendRates(0.5 * (points[i].Kelvin + points[i - 1].Kelvin), current);
            }
            else
            {
                if (previousKelvin != points[i - 1].Kelvin) Works(points[i - 1].Kelvin, previous);
                Works(points[i].Kelvin, current);
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
        var progress = new double[width];
        var atRate = new Vector<double>(HeatMargin.LogRate);
        foreach (var (kelvin, hours) in histogram.Bins())
        {
            var place = Place(kelvin);
            for (var at = 0; at < width; at += Vector<double>.Count)
            {
                var (log, slope) = At(place, at);
                var rate = Exp(((log - atRate) * exponent) + atRate) * slope * (exponent * hours);
                (new Vector<double>(progress, at) + rate).CopyTo(progress, at);
            }
        }

        return progress[..curves.Length];
    }

    /// <summary>K of every cone at a temperature, K/h.</summary>
    private void Works(double kelvin, double[] into)
    {
        var place = Place(kelvin);
        for (var at = 0; at < width; at += Vector<double>.Count) Exp(At(place, at).Log).CopyTo(into, at);
    }

    /// <summary>k of every cone at a temperature, 1/h.</summary>
    private void BendRates(double kelvin, double[] into)
    {
        var place = Place(kelvin);
        for (var at = 0; at < width; at += Vector<double>.Count)
        {
            var (log, slope) = At(place, at);
            (Exp(log) * slope).CopyTo(into, at);
        }
    }

    /// <summary>ln K and its slope of as many cones as a vector holds.</summary>
    private (Vector<double> Log, Vector<double> Slope) At((int Row, double Share) place, int at)
    {
        var first = (place.Row * width) + at;
        var u = new Vector<double>(place.Share) - new Vector<double>(phases, at);
        // Below the point of a curve within this degree, its piece begins in the degree before.
        var before = Vector.LessThan(u, Vector<double>.Zero);
        u += Vector.ConditionalSelect(before, Vector<double>.One, Vector<double>.Zero);
        Vector<double> Take(double[] table, int step) => Vector.ConditionalSelect(
            before, new Vector<double>(table, first + (step * width)), new Vector<double>(table, first + ((step + 1) * width)));
        var (y0, s0, s1) = (Take(logs, 0), Take(slopes, 0), Take(slopes, 1));
        var rise = Take(logs, 1) - y0;
        var square = (rise * 3) - (s0 * 2) - s1;
        var cube = s0 + s1 - (rise * 2);
        return (y0 + (u * (s0 + (u * (square + (u * cube))))), s0 + (u * ((square * 2) + (u * cube * 3))));
    }

    private static Vector<double> Exp(Vector<double> log) =>
        Vector.Exp(Vector.Max(Vector.Min(log, new Vector<double>(MostLog)), new Vector<double>(-MostLog)));

    private static (int Row, double Share) Place(double kelvin)
    {
        var x = kelvin - Zero - ColdestCelsius;
        var row = (int)x;
        return (row, x - row);
    }
}
