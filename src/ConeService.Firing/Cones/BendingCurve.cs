using ConeService.Contract.Cones;

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

    /// <summary>K at a temperature, K/h.</summary>
    public double K(double temperature) => Math.Exp(LogK(temperature));

    /// <summary>Bend rate k = K·s at a temperature, 1/h: progress per hour of a hold.</summary>
    public double BendRate(double temperature) => K(temperature) * Slope(temperature);

    /// <summary>The end point of a steady ramp, K.</summary>
    /// <param name="rate">Rate, °C/h.</param>
    public double EndPoint(double rate) => Inverse(Math.Log(rate));
}
