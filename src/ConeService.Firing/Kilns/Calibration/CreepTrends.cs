using ConeService.Contract.Kilns;
using ConeService.Firing.HeatWork;
using MathNet.Numerics.LinearRegression;

namespace ConeService.Firing.Kilns.Calibration;

/// <summary>Whether a quantity creeps from firing to firing: a line by least squares, by MathNet.Numerics.</summary>
internal static class CreepTrends
{
    // Two points make any line.
    private const int Least = 3;
    private const double Level = 0.05;

    // A scatter below a thousandth is that of rounding and proves nothing.
    private const double LeastScatter = 0.001;

    /// <summary>The trend; null when fewer than three firings tell it.</summary>
    /// <param name="values">The quantity in each firing in the order of time; null where it is not known.</param>
    public static CreepTrend? Of(IEnumerable<double?> values)
    {
        var points = values.Index().Where(v => v.Item is not null).Select(v => (Number: (double)v.Index, Value: v.Item!.Value)).ToList();
        if (points.Count < Least) return null;
        var (mean, middle) = (points.Average(p => p.Value), points.Average(p => p.Number));
        var (intercept, slope) = SimpleRegression.Fit([.. points.Select(p => p.Number)], [.. points.Select(p => p.Value)]);
        var freedom = points.Count - 2;
        var rest = points.Sum(p => Math.Pow(p.Value - intercept - (slope * p.Number), 2)) / freedom;
        var scatter = Math.Max(Math.Sqrt(rest), LeastScatter * mean);
        var error = scatter / Math.Sqrt(points.Sum(p => Math.Pow(p.Number - middle, 2)));
        var chance = StudentDistribution.Beyond(slope / error, freedom);
        return new(
            Math.Round(100 * slope / mean, 2), Math.Round(100 * error / mean, 2), Math.Round(chance, 4), chance < Level, points.Count);
    }
}
