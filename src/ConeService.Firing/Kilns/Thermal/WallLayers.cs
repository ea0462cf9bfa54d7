using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Kilns.Thermal;

/// <summary>
/// A wall cut into layers of equal thickness. Heat spreads at edges and corners: the area it crosses at depth x is
/// A·(1 + e·x/side)², side being that of the cube with the same area over volume.
/// </summary>
internal sealed class WallLayers
{
    /// <summary>Number of layers.</summary>
    public const int Count = 8;

    private readonly double k0, k1, k2;
    private readonly SpecificHeat heat;
    private readonly double[] kilograms = new double[Count];

    // ∫dx/A over the inner and the outer half of each layer, 1/m.
    private readonly double[] inner = new double[Count], outer = new double[Count];

    public WallLayers(KilnMaterialRow material, double metres, double insideSquareMetres, double sideMetres, double edge)
    {
        (k0, k1, k2) = ((double)material.ConductivityConstant!, (double)material.ConductivitySlope!, (double)material.ConductivitySquare!);
        heat = SpecificHeat.Of(material);
        var (density, spread, depth) = ((double)material.DensityKilogramsPerCubicMetre!, edge / sideMetres, metres / Count);
        for (var i = 0; i < Count; i++)
        {
            var (from, middle, to) = (1 + (spread * i * depth), 1 + (spread * (i + 0.5) * depth), 1 + (spread * (i + 1) * depth));
            kilograms[i] = density * insideSquareMetres * depth * ((from * from) + (from * to) + (to * to)) / 3;
            inner[i] = depth / 2 / (insideSquareMetres * from * middle);
            outer[i] = depth / 2 / (insideSquareMetres * middle * to);
        }

        OuterSquareMetres = insideSquareMetres * Math.Pow(1 + (spread * metres), 2);
    }

    /// <summary>Area of the outer surface that gives heat off, m².</summary>
    public double OuterSquareMetres { get; }

    /// <summary>Conductivity at a temperature, W/(m K).</summary>
    public double Conductivity(double kelvin)
    {
        var t = kelvin - Temperature.KelvinAtZero;
        return k0 + (t * (k1 + (t * k2)));
    }

    /// <summary>Resistance of the inner half of a layer, K/W.</summary>
    public double InnerResistance(int layer, double conductivity) => inner[layer] / conductivity;

    /// <summary>Resistance of the outer half of a layer, K/W.</summary>
    public double OuterResistance(int layer, double conductivity) => outer[layer] / conductivity;

    /// <summary>Capacity of a layer, J/K.</summary>
    public double Capacity(int layer, double kelvin) => kilograms[layer] * heat.At(kelvin);

    /// <summary>Heat that a layer takes up, J.</summary>
    public double Between(int layer, double from, double to) => kilograms[layer] * heat.Between(from, to);
}
