namespace ConeService.Data;

/// <summary>When a landmark of a firing is met.</summary>
public enum LandmarkPhase
{
    /// <summary>On the way up.</summary>
    Heating,

    /// <summary>On the way down.</summary>
    Cooling,

    /// <summary>Both ways.</summary>
    Either,

    /// <summary>How the kiln looks.</summary>
    Look,
}
