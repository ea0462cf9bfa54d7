using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>
/// How much hotter a whole history would have to be for a cone to come to a progress; from the histogram, good to 1e-3 of I, which is
/// 0.02 K. What was asked once is kept, as a pack holds cones of one number.
/// </summary>
internal sealed class HistoryShifts(HeatHistory history)
{
    private const double Widest = 150;

    private readonly List<(double Kelvin, double Hours)> bins = [.. new ResidenceHistogram(history).Bins()];
    private readonly Dictionary<(BendingCurve Curve, double Progress), double> known = [];

    /// <summary>The shift, K, within ±150 K.</summary>
    public double To(BendingCurve curve, double progress)
    {
        if (known.TryGetValue((curve, progress), out var found)) return found;
        var (low, high) = (-Widest, Widest);
        while (high - low > 0.005)
        {
            var middle = 0.5 * (low + high);
            if (bins.Sum(b => b.Hours * curve.BendRate(b.Kelvin + middle)) < progress) low = middle;
            else high = middle;
        }

        return known[(curve, progress)] = 0.5 * (low + high);
    }
}
