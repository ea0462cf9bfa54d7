using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>
/// How much hotter a whole history would have to be for a cone to come to a progress; from the histogram, good to 1e-3 of I, which is
/// 0.02 K. What was asked once is kept, as a pack holds cones of one number.
/// </summary>
internal sealed class HistoryShifts(HeatHistory history)
{
    private const double Widest = 150;

    // ln I is found to this, some 0.001 K.
    private const double Close = 1e-4;

    // Colder than this below the peak no firing bends a cone that its peak bends: the flattest curve has lost e^-9 there.
    private const double Telling = 300;

    private readonly List<(double Kelvin, double Hours)> bins =
        [.. history.Residence.Bins().Where(b => b.Kelvin > history.Peak.Kelvin - Telling)];

    private readonly Dictionary<(BendingCurve Curve, double Progress), double> known = [];

    /// <summary>The shift, K, within ±150 K.</summary>
    public double To(BendingCurve curve, double progress)
    {
        if (known.TryGetValue((curve, progress), out var found)) return found;
        var wanted = Math.Log(progress);
        double Beyond(double shift) =>
            Math.Log(Math.Max(bins.Sum(b => b.Hours * curve.BendRate(b.Kelvin + shift)), double.Epsilon)) - wanted;
        var (low, high) = (-Widest, Widest);
        var (atLow, atHigh) = (Beyond(low), Beyond(high));
        if (atLow >= 0 || atHigh <= 0) return known[(curve, progress)] = atLow >= 0 ? low : high;
        var middle = low;
        // ln I is nearly a straight line: false position, with the end that stays put halved so that both close in (Illinois).
        for (int i = 0, side = 0; i < 60; i++)
        {
            Patience.Check();
            middle = ((low * atHigh) - (high * atLow)) / (atHigh - atLow);
            var at = Beyond(middle);
            if (Math.Abs(at) < Close) break;
            if (at > 0)
            {
                (high, atHigh) = (middle, at);
                if (side > 0) atLow /= 2;
                side = 1;
            }
            else
            {
                (low, atLow) = (middle, at);
                if (side < 0) atHigh /= 2;
                side = -1;
            }
        }

        return known[(curve, progress)] = middle;
    }
}
