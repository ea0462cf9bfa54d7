
namespace ConeService.Firing.Cones;

/// <summary>
/// The integral of an Arrhenius rate over a linear ramp, G(T;E) = ∫₀ᵀ exp(−E/RT′) dT′ = T·E₂(x) with x = E/RT.
/// See docs/cone-curves.md; E₂ is the exponential integral of NIST DLMF §8.19.
/// </summary>
internal static class ArrheniusIntegral
{
    /// <summary>Molar gas constant, J/(mol K), CODATA 2018 (exact since the 2019 redefinition of the SI).</summary>
    public const double GasConstant = 8.314462618;

    // Enough for double precision at x ≥ 5; the pottery range is x = 15 … 300.
    private const int Terms = 60;

    /// <summary>
    /// eˣ·E₂(x) for x &gt; 0 by the continued fraction of DLMF 8.19.17 evaluated from the tail; the scaled form neither
    /// under- nor overflows.
    /// </summary>
    public static double ScaledE2(double x)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(x);
        var tail = 0.0;
        for (var i = Terms; i >= 1; i--) tail = i * (i + 1) / (x + 2 + (2 * i) - tail);
        return 1 / (x + 2 - tail);
    }

    /// <summary>ln G(T;E), up to nothing: G in kelvin.</summary>
    /// <param name="kelvin">Temperature, K, above 0.</param>
    /// <param name="energy">Activation energy, J/mol.</param>
    public static double LogG(double kelvin, double energy)
    {
        var x = energy / (GasConstant * kelvin);
        return Math.Log(kelvin) - x + Math.Log(ScaledE2(x));
    }

    /// <summary>s = d ln G / dT = 1 / (T·eˣE₂(x)), 1/K.</summary>
    /// <param name="kelvin">Temperature, K, above 0.</param>
    /// <param name="energy">Activation energy, J/mol.</param>
    public static double Slope(double kelvin, double energy)
    {
        var x = energy / (GasConstant * kelvin);
        return 1 / (kelvin * ScaledE2(x));
    }

    /// <summary>The activation energy, J/mol, whose <see cref="Slope"/> at <paramref name="kelvin"/> is <paramref name="slope"/>.</summary>
    /// <remarks>The slope grows with E without bound; bisection in ln E over 1 kJ/mol … 100 MJ/mol.</remarks>
    public static double EnergyForSlope(double kelvin, double slope)
    {
        var low = Math.Log(1e3);
        var high = Math.Log(1e8);
        for (var i = 0; i < 200 && high - low > 1e-15 * high; i++)
        {
            var middle = 0.5 * (low + high);
            if (Slope(kelvin, Math.Exp(middle)) < slope) low = middle;
            else high = middle;
        }

        return Math.Exp(0.5 * (low + high));
    }
}
