using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Firing.Kilns;

/// <summary>
/// Kiln and load with every parameter decided. Made by <see cref="KilnModel.Resolve"/>; immutable, for any number of predictions.
/// </summary>
internal sealed record KilnSetup
{
    /// <summary>What heats the kiln.</summary>
    public required KilnHeat Heat { get; init; }

    /// <summary>Inner volume, L.</summary>
    public required double VolumeLitres { get; init; }

    /// <summary>Inner surface, m².</summary>
    public required double InsideSquareMetres { get; init; }

    /// <summary>Id of the wall's material in kiln-materials.</summary>
    public required string WallMaterial { get; init; }

    /// <summary>Thickness of the wall, mm.</summary>
    public required double WallMillimetres { get; init; }

    /// <summary>Rated power, kW.</summary>
    public required double RatedKilowatts { get; init; }

    /// <summary>Power that is really there, kW: rated × (V/V₀)² ÷ ageing;
    /// of a gas kiln the burners' rating, before the flue.</summary>
    public required double AvailableKilowatts { get; init; }

    /// <summary>Share of the rated power that the voltage leaves, (V/V₀)²; 1 where it is not stated.</summary>
    public required double VoltageShare { get; init; }

    /// <summary>Resistance of the elements over that of new ones.</summary>
    public required double ElementAgeing { get; init; }

    /// <summary>Highest temperature that the maker allows, °C; null when not stated.</summary>
    public required double? MaxCelsius { get; init; }

    /// <summary>Leak against a closed kiln.</summary>
    public required double LeakFactor { get; init; }

    /// <summary>Gas: fuel really burnt over the lower bound; null when not stated.</summary>
    public required double? FuelFactor { get; init; }

    /// <summary>Ware as loaded, kg.</summary>
    public required double KilogramsWare { get; init; }

    /// <summary>Shelves and posts, kg.</summary>
    public required double KilogramsFurniture { get; init; }

    /// <summary>Free water in the ware, kg.</summary>
    public required double KilogramsWater { get; init; }

    /// <summary>Whether the clay gives off bound water.</summary>
    public required WareStage Ware { get; init; }

    /// <summary>Every parameter that the caller left out, names as JSON members below <c>kiln</c> and <c>load</c>.</summary>
    public required IReadOnlyList<Assumption> Assumed { get; init; }

    /// <summary>Ids of the sources of the rows of kiln-materials and kiln-defaults that were used.</summary>
    public required IReadOnlyList<string> Sources { get; init; }
}
