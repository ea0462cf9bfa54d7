namespace ConeService.Data;

/// <summary>The closed vocabulary of atmospheres in which colours are told.</summary>
public enum ColourAtmosphere
{
    /// <summary>In all of them.</summary>
    Any,

    /// <summary>More air than the fuel needs; every electric kiln.</summary>
    Oxidation,

    /// <summary>Just the air that the fuel needs.</summary>
    Neutral,

    /// <summary>Too little air: oxides lose oxygen.</summary>
    Reduction,

    /// <summary>In the vapour of salt or soda.</summary>
    SaltSoda,

    /// <summary>Drawn hot and smoked, as in raku.</summary>
    PostFireReduction,

    /// <summary>A reducer in the glaze, the kiln oxidising.</summary>
    LocalReduction,
}
