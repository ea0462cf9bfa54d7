namespace ConeService.Data;

/// <summary>How a kiln is vented during a segment.</summary>
public enum VentSetting
{
    /// <summary>Vents and spyholes open.</summary>
    Open,

    /// <summary>As the kiln is usually fired.</summary>
    AsNormal,

    /// <summary>Door or lid propped.</summary>
    Propped,

    /// <summary>Damper open.</summary>
    DamperOpen,

    /// <summary>Damper part of the way in.</summary>
    DamperPartIn,

    /// <summary>Damper in.</summary>
    DamperIn,

    /// <summary>Outdoors.</summary>
    Outdoors,
}
