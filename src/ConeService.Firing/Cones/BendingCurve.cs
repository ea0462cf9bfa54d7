
namespace ConeService.Firing.Cones;

/// <summary>How one cone bends: K(T) in K/h, where a ramp at rate b °C/h ends at K(T) = b. Temperatures in kelvin.</summary>
internal abstract class BendingCurve
{
    /// <summary>ln K at a temperature, K in K/h.</summary>
    public abstract double LogK(double temperature);

    /// <summary>s = d ln K / dT at a temperature, 1/K.</summary>
    public abstract double Slope(double temperature);

    /// <summary>The temperature, K, where ln K equals <paramref name="logK"/>.</summary>
    public abstract double Inverse(double logK);

    /// <summary>The fraction of a degree Celsius, 0 to 1, at which the knots of the curve lie: 0 for whole degrees.</summary>
    public abstract double KnotPhase { get; }

    /// <summary>K at a temperature, K/h.</summary>
    public double K(double temperature) => Math.Exp(LogK(temperature));

    /// <summary>Bend rate k = K·s at a temperature, 1/h: progress per hour of a hold.</summary>
    public double BendRate(double temperature) => K(temperature) * Slope(temperature);

    /// <summary>What a temperature has beyond whole degrees; what is left of rounding counts as a whole one.</summary>
    protected static double Fraction(double degrees)
    {
        var rounded = Math.Round(degrees, 9);
        return rounded - Math.Floor(rounded);
    }

    /// <summary>The end point of a steady ramp, K.</summary>
    /// <param name="rate">Rate, °C/h.</param>
    public double EndPoint(double rate) => Inverse(Math.Log(rate));
}
