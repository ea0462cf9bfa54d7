using ConeService.Contract.HeatWork;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>How sure a margin is: its σ, from the parts that all cones share and those of one cone. Everything in K.</summary>
internal static class HeatUncertainty
{
    private const double NearKelvin = 45;

    /// <summary>σ of a margin, K.</summary>
    /// <param name="shared">The parts that are the same for every cone.</param>
    /// <param name="chart">Scatter of the chart about its curve, widened beyond its printed rates, K.</param>
    /// <param name="slope">Effect of the uncertain slope of the curve on this history, K.</param>
    /// <param name="perKelvin">How many kelvins the margin moves when the whole history moves by one; see <see cref="PerKelvin"/>.</param>
    public static double Sigma(SharedUncertainty shared, double chart, double slope, double perKelvin = 1)
    {
        var temperature = Square(shared.ThermocoupleCelsiusDifference) + Square(shared.DriftCelsiusDifference)
            + Square(shared.ConeCelsiusDifference)
            + Square(shared.GradientCelsiusDifference) + Square(chart);
        return Math.Sqrt((Square(perKelvin) * temperature) + Square(slope));
    }

    /// <summary>
    /// m/δ, where δ is how far the whole history would have to be cooler for the cone to be just down. Exactly 1 for a
    /// ramp at 60 °C/h; a hold well below the end point moves a margin, which is told in degrees of such a ramp, by more
    /// or less than the error of the meter. Without it Φ(m/σ) misses a simulation by up to 0.08 (docs/heat-work.md).
    /// </summary>
    /// <param name="curve">The cone.</param>
    /// <param name="history">The firing.</param>
    /// <param name="margin">Its margin, K.</param>
    public static double PerKelvin(BendingCurve curve, ResidenceHistogram history, double margin)
    {
        // Far from the end point the probability is 0 or 1 whatever the factor.
        if (Math.Abs(margin) > NearKelvin) return 1;
        var from = curve.EndPoint(HeatMargin.Rate) - (2 * NearKelvin);
        var bins = history.Bins().Where(b => b.Kelvin > from).ToList();
        double LogProgress(double shift) => Math.Log(Math.Max(bins.Sum(b => b.Hours * curve.BendRate(b.Kelvin + shift)), 1e-100));
        if (Math.Abs(margin) < 0.5)
        {
            return HeatMargin.Of(curve, Math.Exp(LogProgress(0.5))) - HeatMargin.Of(curve, Math.Exp(LogProgress(-0.5)));
        }

        var (x0, x1) = (0.0, -margin);
        var y0 = LogProgress(x0);
        for (var i = 0; i < 8 && Math.Abs(x1 - x0) > 0.01; i++)
        {
            Patience.Check();
            var y1 = LogProgress(x1);
            if (y1 == y0) break;
            (x0, x1, y0) = (x1, x1 - (y1 * (x1 - x0) / (y1 - y0)), y1);
        }

        return Math.Clamp(-margin / x1, 0.25, 4);
    }

    /// <summary>Half the spread of the margins when every curve is steeper and flatter by one standard deviation of ln E, K.</summary>
    public static double[] OfSlopes(ConeCurves curves, ScaleWork work, ResidenceHistogram histogram, double logSigma)
    {
        double[] Margins(double exponent)
        {
            var progress = curves.Table.FollowSteeper(histogram, exponent);
            // K′⁻¹(60·I) is K⁻¹(60·I^(1/a)).
            return [.. work.Cones.Select((c, i) => HeatMargin.Of(c.Curve, Math.Pow(progress[i], 1 / exponent)))];
        }

        return [.. Margins(Math.Exp(logSigma)).Zip(Margins(Math.Exp(-logSigma)), (steep, flat) => 0.5 * Math.Abs(steep - flat))];
    }

    /// <summary>P(the cone is down) = Φ(m/σ).</summary>
    public static double Probability(double margin, double sigma) => NormalDistribution.Below(margin / sigma);

    private static double Square(double value) => value * value;
}
