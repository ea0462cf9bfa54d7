namespace ConeService.Data;

/// <summary>The atmosphere of a firing. A word of the contract.</summary>
public enum FiringAtmosphere
{
    /// <summary>Air to spare.</summary>
    Oxidation,

    /// <summary>Neither air nor fuel to spare.</summary>
    Neutral,

    /// <summary>Fuel to spare: it takes oxygen from clay and glaze.</summary>
    Reduction,
}
