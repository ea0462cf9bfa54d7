namespace ConeService.Firing.HeatWork;

/// <summary>The standard normal distribution.</summary>
public static class NormalDistribution
{
    // Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.2.17: |error| < 7.5e-8.
    private const double P = 0.2316419;
    private static readonly double[] B = [0.319381530, -0.356563782, 1.781477937, -1.821255978, 1.330274429];

    /// <summary>Φ(z): the probability of a value below z.</summary>
    public static double Below(double z)
    {
        if (z < 0) return 1 - Below(-z);
        if (z > 40) return 1;
        var t = 1 / (1 + (P * z));
        var polynomial = t * (B[0] + (t * (B[1] + (t * (B[2] + (t * (B[3] + (t * B[4]))))))));
        return 1 - (Math.Exp(-0.5 * z * z) / Math.Sqrt(2 * Math.PI) * polynomial);
    }
}
