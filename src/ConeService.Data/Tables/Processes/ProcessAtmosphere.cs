namespace ConeService.Data;

/// <summary>An atmosphere that a process passes through.</summary>
public enum ProcessAtmosphere
{
    /// <summary>More air than the fuel needs.</summary>
    Oxidation,

    /// <summary>Just the air that the fuel needs.</summary>
    Neutral,

    /// <summary>Too little air.</summary>
    Reduction,
}
