namespace ConeService.Data;

/// <summary>Whether a body holds water.</summary>
public enum HoldsWater
{
    /// <summary>Dense when fired in its range.</summary>
    WhenMature,

    /// <summary>Only under a sound glaze.</summary>
    WhenGlazed,

    /// <summary>Not to be relied on, even glazed.</summary>
    Porous,
}
