namespace ConeService.Data;

/// <summary>Whether a body stands being drawn red hot.</summary>
public enum ThermalShock
{
    /// <summary>Made for it or known to.</summary>
    Open,

    /// <summary>Not.</summary>
    Dense,

    /// <summary>Nothing is known.</summary>
    NotStated,
}
