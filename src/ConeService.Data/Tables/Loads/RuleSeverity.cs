namespace ConeService.Data;

/// <summary>How binding a load rule is.</summary>
public enum RuleSeverity
{
    /// <summary>Never to be broken.</summary>
    Must,

    /// <summary>Broken only for a reason.</summary>
    Should,

    /// <summary>To be told.</summary>
    Warn,

    /// <summary>Allowed.</summary>
    May,

    /// <summary>A figure to plan with.</summary>
    Guide,
}
