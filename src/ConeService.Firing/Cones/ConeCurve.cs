using ConeService.Contract.Quantities;

namespace ConeService.Firing.Cones;

/// <summary>
/// The bending curve of one cone, K(T) in K/h: a ramp at rate b ends exactly where K(T) = b, so every printed end
/// point is one point of it. Between the printed rates a monotone cubic of ln K, beyond them an Arrhenius tail with
/// continuous slope. The equations and their limits are in docs/cone-curves.md.
/// </summary>
internal sealed class ConeCurve : BendingCurve
{
    private const double SlopeClamp = 2.5;
    private const double ColdestKelvin = 200;
    private const double HottestKelvin = 4000;

    private readonly double[] kelvin;
    private readonly double[] logRate;
    private readonly double[] slope;
    private readonly Tail below;
    private readonly Tail above;

    /// <summary>Builds the curve through printed end points.</summary>
    /// <param name="points">(rate in °C/h, end point in K); at least two, both rising strictly.</param>
    /// <param name="energy">Activation energy for the tails, J/mol.</param>
    /// <exception cref="ArgumentException">Fewer than two points, or points that do not rise.</exception>
    public ConeCurve(IReadOnlyList<(double Rate, double Kelvin)> points, double energy)
    {
        if (points.Count < 2) throw new ArgumentException("A curve needs end points at two rates.", nameof(points));
        kelvin = [.. points.Select(p => p.Kelvin)];
        logRate = [.. points.Select(p => Math.Log(p.Rate))];
        for (var i = 1; i < points.Count; i++)
        {
            if (kelvin[i] <= kelvin[i - 1] || logRate[i] <= logRate[i - 1])
            {
                throw new ArgumentException("End points must rise with the rate.", nameof(points));
            }
        }

        slope = Slopes(kelvin, logRate, energy);
        below = Tail.At(kelvin[0], logRate[0], slope[0], energy);
        above = Tail.At(kelvin[^1], logRate[^1], slope[^1], energy);
    }

    /// <summary>ln of the slowest rate with a printed end point, rate in °C/h.</summary>
    public double SlowestLog => logRate[0];

    /// <summary>ln of the fastest rate with a printed end point, rate in °C/h.</summary>
    public double FastestLog => logRate[^1];

    /// <inheritdoc/>
    /// <remarks>Charts print whole degrees; that of the first knot stands for all.</remarks>
    public override double KnotPhase => Fraction(kelvin[0] - Temperature.KelvinAtZero);

    /// <inheritdoc/>
    public override double LogK(double temperature)
    {
        if (temperature <= kelvin[0]) return below.LogK(temperature);
        if (temperature >= kelvin[^1]) return above.LogK(temperature);
        var i = Segment(temperature);
        var h = kelvin[i + 1] - kelvin[i];
        var u = (temperature - kelvin[i]) / h;
        var u2 = u * u;
        var u3 = u2 * u;
        return (((2 * u3) - (3 * u2) + 1) * logRate[i])
            + ((u3 - (2 * u2) + u) * h * slope[i])
            + (((3 * u2) - (2 * u3)) * logRate[i + 1])
            + ((u3 - u2) * h * slope[i + 1]);
    }

    /// <inheritdoc/>
    public override double Slope(double temperature)
    {
        if (temperature <= kelvin[0]) return below.Slope(temperature);
        if (temperature >= kelvin[^1]) return above.Slope(temperature);
        var i = Segment(temperature);
        var h = kelvin[i + 1] - kelvin[i];
        var u = (temperature - kelvin[i]) / h;
        return (6 * u * (u - 1) * (logRate[i] - logRate[i + 1]) / h)
            + (((3 * u * u) - (4 * u) + 1) * slope[i])
            + (((3 * u * u) - (2 * u)) * slope[i + 1]);
    }

    /// <inheritdoc/>
    /// <remarks>Newton steps kept inside a bracket; ends when the bracket or the step is at the resolution of a double.</remarks>
    public override double Inverse(double logK)
    {
        double low = ColdestKelvin, high = HottestKelvin;
        var t = StartFor(logK);
        for (var i = 0; i < 200; i++)
        {
            var miss = LogK(t) - logK;
            if (miss == 0) return t;
            if (miss > 0) high = t;
            else low = t;
            var next = t - (miss / Slope(t));
            if (!(next > low && next < high)) next = 0.5 * (low + high);
            if (next == t || high - low <= double.BitIncrement(low) - low) return next;
            t = next;
        }

        return t;
    }

    private double StartFor(double logK)
    {
        if (logK <= logRate[0]) return kelvin[0];
        if (logK >= logRate[^1]) return kelvin[^1];
        var i = 0;
        while (logRate[i + 1] < logK) i++;
        return kelvin[i] + ((logK - logRate[i]) / (logRate[i + 1] - logRate[i]) * (kelvin[i + 1] - kelvin[i]));
    }

    private int Segment(double temperature)
    {
        var i = 0;
        while (kelvin[i + 1] < temperature) i++;
        return i;
    }

    /// <summary>
    /// Inside a weighted harmonic mean of the secants, at the ends the Arrhenius slope; each at most 2.5 adjacent
    /// secants.
    /// </summary>
    private static double[] Slopes(double[] t, double[] y, double energy)
    {
        var n = t.Length;
        var slopes = new double[n];
        double Secant(int i) => (y[i + 1] - y[i]) / (t[i + 1] - t[i]);
        slopes[0] = Math.Min(ArrheniusIntegral.Slope(t[0], energy), SlopeClamp * Secant(0));
        slopes[^1] = Math.Min(ArrheniusIntegral.Slope(t[^1], energy), SlopeClamp * Secant(n - 2));
        for (var i = 1; i < n - 1; i++)
        {
            double h1 = t[i] - t[i - 1], h2 = t[i + 1] - t[i];
            double w1 = (2 * h2) + h1, w2 = h2 + (2 * h1);
            double d1 = Secant(i - 1), d2 = Secant(i);
            var mean = (w1 + w2) / ((w1 / d1) + (w2 / d2));
            slopes[i] = Math.Min(mean, SlopeClamp * Math.Min(d1, d2));
        }

        return slopes;
    }

    /// <summary>Arrhenius continuation beyond a knot, through the knot's value and slope.</summary>
    private readonly record struct Tail(double LogRateAtKnot, double LogGAtKnot, double Energy)
    {
        public static Tail At(double kelvin, double logRate, double slope, double energy)
        {
            // E* = E unless the slope was clamped; bisection would only lose digits.
            var effective = slope == ArrheniusIntegral.Slope(kelvin, energy) ? energy : ArrheniusIntegral.EnergyForSlope(kelvin, slope);
            return new(logRate, ArrheniusIntegral.LogG(kelvin, effective), effective);
        }

        // The difference first: at the knot it is exactly zero and the printed value comes back exactly.
        public double LogK(double kelvin) => LogRateAtKnot + (ArrheniusIntegral.LogG(kelvin, Energy) - LogGAtKnot);

        public double Slope(double kelvin) => ArrheniusIntegral.Slope(kelvin, Energy);
    }
}
