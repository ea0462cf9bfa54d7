namespace ConeService.Firing.HeatWork;

/// <summary>The parts of the uncertainty of a margin that are the same for every cone, as standard deviations, K.</summary>
/// <param name="ThermocoupleCelsius">The tolerance at the peak as a rectangular distribution, a/√3.</param>
/// <param name="DriftCelsius">Drift of the thermocouple with its firings.</param>
/// <param name="ConeCelsius">Spread between cones of one number.</param>
/// <param name="GradientCelsius">Difference between the places of thermocouple and cone.</param>
public sealed record HeatUncertainty(double ThermocoupleCelsius, double DriftCelsius, double ConeCelsius, double GradientCelsius)
{
    /// <summary>σ of a margin, K.</summary>
    /// <param name="chart">Scatter of the chart about its curve, widened beyond its printed rates, K.</param>
    /// <param name="slope">Effect of the uncertain slope of the curve on this history, K.</param>
    public double Sigma(double chart, double slope) => Math.Sqrt(
        (ThermocoupleCelsius * ThermocoupleCelsius) + (DriftCelsius * DriftCelsius) + (ConeCelsius * ConeCelsius)
        + (GradientCelsius * GradientCelsius) + (chart * chart) + (slope * slope));

    /// <summary>Half the spread of the margins when every curve is steeper and flatter by one standard deviation of ln E, K.</summary>
    public static double[] OfSlopes(ScaleMeter meter, ScaleWork work, HeatHistory history, double logSigma)
    {
        var histogram = new ResidenceHistogram(history);
        double[] Margins(double exponent)
        {
            var progress = meter.Table.FollowSteeper(histogram, exponent);
            // K′⁻¹(60·I) is K⁻¹(60·I^(1/a)).
            return [.. work.Cones.Select((c, i) => HeatMargin.Of(c.Curve, Math.Pow(progress[i], 1 / exponent)))];
        }

        return [.. Margins(Math.Exp(logSigma)).Zip(Margins(Math.Exp(-logSigma)), (steep, flat) => 0.5 * Math.Abs(steep - flat))];
    }

    /// <summary>P(the cone is down) = Φ(m/σ).</summary>
    public static double Probability(double margin, double sigma) => NormalDistribution.Below(margin / sigma);
}
