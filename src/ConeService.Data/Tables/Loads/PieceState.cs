namespace ConeService.Data;

/// <summary>How far a piece has come. A word of the contract.</summary>
public enum PieceState
{
    /// <summary>Just made.</summary>
    Wet,

    /// <summary>Stiff, still damp.</summary>
    LeatherHard,

    /// <summary>Dry as far as the room can dry it.</summary>
    BoneDry,

    /// <summary>Fired once, absorbent.</summary>
    Bisqued,

    /// <summary>Its glaze has been fired.</summary>
    GlazeFired,
}
