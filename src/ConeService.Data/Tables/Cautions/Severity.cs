namespace ConeService.Data;

/// <summary>How bad a hazard can get without control.</summary>
public enum Severity
{
    /// <summary>Nuisance or slight harm.</summary>
    Low,

    /// <summary>Harm that heals, or harm after long exposure.</summary>
    Medium,

    /// <summary>Serious or lasting harm.</summary>
    High,

    /// <summary>Can kill or maim.</summary>
    Critical,
}
