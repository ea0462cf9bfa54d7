namespace ConeService.Data;

/// <summary>How hazardous a colorant is to whoever handles and fires it.</summary>
public enum HazardLevel
{
    /// <summary>Low.</summary>
    Low,

    /// <summary>Low to moderate.</summary>
    LowModerate,

    /// <summary>Moderate.</summary>
    Moderate,

    /// <summary>Moderate to high.</summary>
    ModerateHigh,

    /// <summary>High.</summary>
    High,
}
