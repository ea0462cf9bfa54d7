namespace ConeService.Firing.Kilns.Thermal;

/// <summary>
/// Water that leaves over a span of temperature, once: cooling does not bring it back. The share follows 3x² − 2x³, so that the heat it
/// takes sets in gently.
/// </summary>
/// <param name="Joules">Heat that all of it takes, J.</param>
/// <param name="FromKelvin">Where it begins, K.</param>
/// <param name="ToKelvin">Where it is gone, K.</param>
internal readonly record struct GivenOff(double Joules, double FromKelvin, double ToKelvin)
{
    /// <summary>Heat taken when the highest temperature so far is <paramref name="kelvin"/>, J.</summary>
    public double Taken(double kelvin)
    {
        var x = Math.Clamp((kelvin - FromKelvin) / (ToKelvin - FromKelvin), 0, 1);
        return Joules * x * x * (3 - (2 * x));
    }

    /// <summary>Its derivative, J/K.</summary>
    public double Capacity(double kelvin)
    {
        var x = (kelvin - FromKelvin) / (ToKelvin - FromKelvin);
        return x is > 0 and < 1 ? Joules * 6 * x * (1 - x) / (ToKelvin - FromKelvin) : 0;
    }
}
