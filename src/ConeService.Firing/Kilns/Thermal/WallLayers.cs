using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
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

    /// <summary>Conductances from the middle of each layer to that of the one inside it, of the first to the chamber, W/K.</summary>
    /// <param name="kelvin">Temperature of each layer, K.</param>
    /// <param name="inward">The conductances.</param>
    /// <returns>Conductance from the middle of the last layer to the outer surface, W/K.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Conductances(double[] kelvin, double[] inward)
    {
        Span<double> resistivity = stackalloc double[Count];
        for (var i = 0; i < Count; i += Vector256<double>.Count)
        {
            var t = Vector256.Create(kelvin.AsSpan(i)) - Vector256.Create(Temperature.KelvinAtZero);
            var conductivity = Vector256.Create(k0) + (t * (Vector256.Create(k1) + (t * k2)));
            (Vector256<double>.One / conductivity).CopyTo(resistivity[i..]);
        }

        inward[0] = 1 / (inner[0] * resistivity[0]);
        for (var i = 1; i < Count; i++) inward[i] = 1 / ((inner[i] * resistivity[i]) + (outer[i - 1] * resistivity[i - 1]));
        return 1 / (outer[Count - 1] * resistivity[Count - 1]);
    }

    /// <summary>Heat contents above a common zero, J, of which only differences mean anything.</summary>
    /// <param name="kelvin">Temperature of each layer, K.</param>
    /// <param name="content">The contents.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Contents(double[] kelvin, double[] content)
    {
        for (var i = 0; i < Count; i += Vector256<double>.Count)
        {
            var t = Vector256.Create(kelvin.AsSpan(i)) - Vector256.Create(heat.ScaleOffset);
            (Vector256.Create(kilograms.AsSpan(i)) * heat.Content(t)).CopyTo(content.AsSpan(i));
        }
    }

    /// <summary>Capacities, J/K, with the contents.</summary>
    /// <param name="kelvin">Temperature of each layer, K.</param>
    /// <param name="capacity">The capacities.</param>
    /// <param name="content">The contents, as <see cref="Contents"/> tells them.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Capacities(double[] kelvin, double[] capacity, double[] content)
    {
        for (var i = 0; i < Count; i += Vector256<double>.Count)
        {
            var t = Vector256.Create(kelvin.AsSpan(i)) - Vector256.Create(heat.ScaleOffset);
            var mass = Vector256.Create(kilograms.AsSpan(i));
            (mass * heat.Content(t)).CopyTo(content.AsSpan(i));
            (mass * heat.At(t)).CopyTo(capacity.AsSpan(i));
        }
    }

    /// <summary>Heat that a layer takes up, J.</summary>
    public double Between(int layer, double from, double to) => kilograms[layer] * heat.Between(from, to);
}
