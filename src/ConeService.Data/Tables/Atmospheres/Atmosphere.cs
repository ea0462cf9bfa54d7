namespace ConeService.Data;

/// <summary>The air around the ware. Which of the words a use may take says <see cref="Atmospheres"/>. A word of the contract.</summary>
public enum Atmosphere
{
    /// <summary>In all of them.</summary>
    Any,

    /// <summary>More air than the fuel needs; every electric kiln.</summary>
    Oxidation,

    /// <summary>Just the air that the fuel needs.</summary>
    Neutral,

    /// <summary>Too little air: it takes oxygen from clay, glaze and oxides.</summary>
    Reduction,

    /// <summary>In the vapour of salt or soda.</summary>
    SaltSoda,

    /// <summary>Drawn hot and smoked, as in raku.</summary>
    PostFireReduction,

    /// <summary>A reducer in the glaze, the kiln oxidising.</summary>
    LocalReduction,
}
