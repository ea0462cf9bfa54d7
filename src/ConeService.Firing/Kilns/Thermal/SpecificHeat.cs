using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Kilns.Thermal;

/// <summary>
/// Specific heat c = constant + slope·T + inverse square/T² and its integral. T is kelvin less <paramref name="ScaleOffset"/>.
/// </summary>
/// <param name="Constant">J/(kg K).</param>
/// <param name="Slope">J/(kg K²).</param>
/// <param name="InverseSquare">J K/kg.</param>
/// <param name="ScaleOffset">273.15 where the formula takes °C, else 0.</param>
internal readonly record struct SpecificHeat(double Constant, double Slope, double InverseSquare, double ScaleOffset)
{
    /// <summary>The specific heat of a material.</summary>
    public static SpecificHeat Of(KilnMaterialRow row) => new(
        (double)row.HeatConstant,
        (double)row.HeatSlope,
        (double)row.HeatInverseSquare,
        row.HeatScale == "celsius" ? Temperature.KelvinAtZero : 0);

    /// <summary>Specific heat at a temperature, J/(kg K).</summary>
    /// <param name="kelvin">Temperature, K.</param>
    public double At(double kelvin)
    {
        var t = kelvin - ScaleOffset;
        return Constant + (Slope * t) + (InverseSquare == 0 ? 0 : InverseSquare / (t * t));
    }

    /// <summary>Heat to bring 1 kg from one temperature to another, J/kg.</summary>
    /// <param name="fromKelvin">From, K.</param>
    /// <param name="toKelvin">To, K.</param>
    public double Between(double fromKelvin, double toKelvin)
    {
        var (a, b) = (fromKelvin - ScaleOffset, toKelvin - ScaleOffset);
        var heat = (Constant * (b - a)) + (Slope / 2 * ((b * b) - (a * a)));
        return InverseSquare == 0 ? heat : heat + (InverseSquare * ((1 / a) - (1 / b)));
    }

    /// <summary>Specific heat at temperatures on this scale, J/(kg K).</summary>
    /// <param name="t">Kelvin less <see cref="ScaleOffset"/>.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> At(Vector256<double> t)
    {
        var plain = Vector256.Create(Constant) + (t * Slope);
        return InverseSquare == 0 ? plain : plain + (Vector256.Create(InverseSquare) / (t * t));
    }

    /// <summary>Heat content above a common zero, J/kg: <see cref="Between"/> is the difference of two.</summary>
    /// <param name="t">Kelvin less <see cref="ScaleOffset"/>.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> Content(Vector256<double> t)
    {
        var plain = t * (Vector256.Create(Constant) + (t * (Slope / 2)));
        return InverseSquare == 0 ? plain : plain - (Vector256.Create(InverseSquare) / t);
    }
}
