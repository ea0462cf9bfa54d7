
namespace ConeService.Firing.Kilns;

/// <summary>
/// Temperature difference inside a wall that is heated from both sides at a steady rate: ΔT = r·L²/(2α), L half the
/// thickness. A limit from it is advice and never a promise: steam and burn-out limit thin ware long before stress does.
/// </summary>
internal static class ThicknessLimit
{
    /// <summary>α of green clay, m²/s; judgement.</summary>
    public const double GreenClayDiffusivity = 3e-7;

    /// <summary>Difference between surface and middle, K.</summary>
    /// <param name="rateCelsiusPerHour">Heating rate, °C/h.</param>
    /// <param name="thicknessMillimetres">Whole thickness, mm.</param>
    /// <param name="diffusivity">Thermal diffusivity, m²/s.</param>
    public static double Difference(double rateCelsiusPerHour, double thicknessMillimetres, double diffusivity = GreenClayDiffusivity)
    {
        var half = thicknessMillimetres / 2000;
        return rateCelsiusPerHour / 3600 * half * half / (2 * diffusivity);
    }

    /// <summary>The rate, °C/h, that keeps the difference at <paramref name="difference"/> K.</summary>
    /// <param name="difference">Difference between surface and middle, K.</param>
    /// <param name="thicknessMillimetres">Whole thickness, mm, above 0.</param>
    /// <param name="diffusivity">Thermal diffusivity, m²/s.</param>
    public static double Rate(double difference, double thicknessMillimetres, double diffusivity = GreenClayDiffusivity)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(thicknessMillimetres);
        return difference / Difference(1, thicknessMillimetres, diffusivity);
    }
}
