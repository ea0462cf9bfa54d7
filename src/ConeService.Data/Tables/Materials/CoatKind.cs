namespace ConeService.Data;

/// <summary>What sort of coat it is.</summary>
public enum CoatKind
{
    /// <summary>Melts to a glass.</summary>
    Glaze,

    /// <summary>A glaze for raku.</summary>
    RakuGlaze,

    /// <summary>Forms from vapour in the kiln.</summary>
    Vapour,

    /// <summary>Colour under a glaze; does not melt by itself.</summary>
    Underglaze,

    /// <summary>Coloured clay.</summary>
    Slip,

    /// <summary>Fine polished slip.</summary>
    TerraSigillata,

    /// <summary>Thin metal film.</summary>
    Lustre,

    /// <summary>Low-fired paint on glaze.</summary>
    Enamel,

    /// <summary>Printed colour.</summary>
    Decal,

    /// <summary>A body that glazes itself.</summary>
    SelfGlazing,
}
