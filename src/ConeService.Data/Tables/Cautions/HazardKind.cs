namespace ConeService.Data;

/// <summary>What sort of hazard a caution is about.</summary>
public enum HazardKind
{
    /// <summary>Fume, vapour or gas that is breathed.</summary>
    FumeOrGas,

    /// <summary>A material that is poisonous to breathe, swallow or touch.</summary>
    ToxicMaterial,

    /// <summary>Dust that harms the lungs.</summary>
    Dust,

    /// <summary>Burns and fire.</summary>
    BurnOrFire,

    /// <summary>Electric shock.</summary>
    Electrical,

    /// <summary>Explosion of gas or steam.</summary>
    Explosion,

    /// <summary>Fragments of ware that fly.</summary>
    FlyingFragments,

    /// <summary>Infrared and visible glare.</summary>
    Radiation,

    /// <summary>Caustic solutions, mists and powders.</summary>
    Caustic,

    /// <summary>Something that may pass from ware into food.</summary>
    FoodContact,

    /// <summary>Exhaustion, lifting, long watches.</summary>
    Strain,

    /// <summary>Ware that fails or does damage in use.</summary>
    WareUse,
}
