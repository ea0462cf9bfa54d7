namespace ConeService.Firing.HeatWork;

/// <summary>The standard normal distribution.</summary>
internal static class NormalDistribution
{
    // Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.2.17: |error| < 7.5e-8.
    private const double P = 0.2316419;
    private static readonly double[] B = [0.319381530, -0.356563782, 1.781477937, -1.821255978, 1.330274429];

    /// <summary>Φ(z): the probability of a value below z.</summary>
    public static double Below(double z)
    {
        var t = 1 / (1 + (P * Math.Abs(z)));
        var polynomial = t * (B[0] + (t * (B[1] + (t * (B[2] + (t * (B[3] + (t * B[4]))))))));
        var tail = Math.Exp(-0.5 * z * z) / Math.Sqrt(2 * Math.PI) * polynomial;
        return z < 0 ? tail : 1 - tail;
    }

    /// <summary>
    /// ln Φ(z), also far out where Φ itself would be lost in rounding: there by −z²/2 − ln(−z·√2π) + ln(1 − 1/z² +
    /// 3/z⁴) (ibid. 26.2.12).
    /// </summary>
    public static double LogBelow(double z) => z > -5
        ? Math.Log(Below(z))
        : (-0.5 * z * z) - Math.Log(-z * Math.Sqrt(2 * Math.PI)) + Math.Log(1 - (1 / (z * z)) + (3 / (z * z * z * z)));
}
