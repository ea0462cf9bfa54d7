namespace ConeService.Data;

/// <summary>Why a piece is not simply accepted. A word of the contract.</summary>
public enum ReasonCode
{
    /// <summary>The firing is hotter than the body stands.</summary>
    BodyOverfired,

    /// <summary>The firing is cooler than the body needs.</summary>
    BodyUnderfired,

    /// <summary>The firing is hotter than the coat stands.</summary>
    GlazeOverfired,

    /// <summary>The firing is cooler than the coat needs.</summary>
    GlazeUnderfired,

    /// <summary>The atmosphere is not the one it needs.</summary>
    AtmosphereMismatch,

    /// <summary>The kiln does not go so high.</summary>
    KilnCannotReachCone,

    /// <summary>The kiln is not made for this atmosphere or kind of firing.</summary>
    KilnCannotHoldAtmosphere,

    /// <summary>The cone of the same number with, or without, the zero would fit.</summary>
    ConeZeroMixUp,

    /// <summary>Too damp or too thick.</summary>
    NotDry,

    /// <summary>It has had its bisque.</summary>
    AlreadyBisqued,

    /// <summary>It has not had its bisque.</summary>
    NotBisqued,

    /// <summary>Another firing comes first.</summary>
    WrongOrder,

    /// <summary>Salt and soda belong into a vapour kiln, and nothing else does.</summary>
    VapourKilnOnly,

    /// <summary>Vapour of a neighbour spoils it.</summary>
    FumesOnNeighbours,

    /// <summary>Glazes of one firing are best at cones too far apart.</summary>
    GlazeConesApart,

    /// <summary>It does not fit in.</summary>
    TooTall,

    /// <summary>It is not for what it is meant for.</summary>
    NotForFood,

    /// <summary>Nobody knows its body or a coat.</summary>
    UnknownMaterial,

    /// <summary>Whether its glaze holds its metals only a leach test tells.</summary>
    LeachTestTells,

    /// <summary>A coat holds a metal that matters for food, for who breathes its fume, or for its neighbours.</summary>
    MetalInCoat,

    /// <summary>All pieces together need more room than the kiln has.</summary>
    LoadTooLarge,
}
