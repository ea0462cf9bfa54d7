namespace ConeService.Data;

/// <summary>How readily a coat runs above its range.</summary>
public enum RunRisk
{
    /// <summary>It does not run.</summary>
    None,

    /// <summary>Hardly.</summary>
    Low,

    /// <summary>From one cone over.</summary>
    Medium,

    /// <summary>At once.</summary>
    High,

    /// <summary>Even within its range.</summary>
    Extreme,
}
