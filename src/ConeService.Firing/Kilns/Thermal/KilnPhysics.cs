using System.Runtime.CompilerServices;

namespace ConeService.Firing.Kilns.Thermal;

/// <summary>The numbers of a kiln and its load that the heat balance needs, in SI units.</summary>
internal sealed record KilnPhysics
{
    /// <summary>Stefan–Boltzmann constant, W/(m² K⁴), CODATA 2018.</summary>
    public const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>Ware and furniture.</summary>
    public required LoadHeat Load { get; init; }

    /// <summary>The wall.</summary>
    public required WallLayers Wall { get; init; }

    /// <summary>Heat capacity of elements, air and skin, J/K.</summary>
    public required double ChamberCapacity { get; init; }

    /// <summary>Area over which chamber and load exchange heat, m².</summary>
    public required double ExchangeSquareMetres { get; init; }

    /// <summary>Emissivity of that exchange.</summary>
    public required double ExchangeEmissivity { get; init; }

    /// <summary>Its convection, W/(m² K).</summary>
    public required double ExchangeConvection { get; init; }

    /// <summary>Heat that leaking air takes, W/K.</summary>
    public required double LeakConductance { get; init; }

    /// <summary>Emissivity of the outer surface.</summary>
    public required double SurfaceEmissivity { get; init; }

    /// <summary>Factor of its natural convection, W/(m² K^(4/3)).</summary>
    public required double SurfaceConvection { get; init; }

    /// <summary>Conductance between chamber and load, W/K.</summary>
    public double Exchange(double chamber, double load) =>
        ExchangeSquareMetres * ((ExchangeEmissivity * Radiation(chamber, load)) + ExchangeConvection);

    /// <summary>Conductance between the outer surface and the room, W/K.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Surface(double surface, double room) =>
        Wall.OuterSquareMetres
        * ((SurfaceEmissivity * Radiation(surface, room)) + (SurfaceConvection * Math.Cbrt(Math.Abs(surface - room))));

    // σ(a⁴ − b⁴) = this × (a − b); 4σT³ where the two are close.
    private static double Radiation(double a, double b) => StefanBoltzmann * ((a * a) + (b * b)) * (a + b);
}
