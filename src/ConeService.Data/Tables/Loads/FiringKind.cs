using System.Diagnostics.CodeAnalysis;

namespace ConeService.Data;

/// <summary>The kind of a firing. A word of the contract.</summary>
public enum FiringKind
{
    /// <summary>The first firing of raw clay, unglazed.</summary>
    Bisque,

    /// <summary>The firing that melts the glaze.</summary>
    Glaze,

    /// <summary>Clay and raw glaze in one firing.</summary>
    [SuppressMessage("Naming", "CA1720", Justification = "A word of the contract, and of the trade.")]
    Single,

    /// <summary>The low firing of lustre, enamel and decals.</summary>
    Overglaze,

    /// <summary>Drawn red hot and smoked.</summary>
    Raku,

    /// <summary>Glazed by salt vapour.</summary>
    Salt,

    /// <summary>Glazed by soda vapour.</summary>
    Soda,

    /// <summary>Fired with wood, for its ash and flame.</summary>
    Wood,

    /// <summary>Pit, bonfire or drum.</summary>
    Pit,

    /// <summary>In a lidded box with what fumes it.</summary>
    Saggar,
}
