namespace ConeService.Firing.Kilns;

/// <summary>What stands in the kiln.</summary>
/// <param name="KilogramsWare">Mass of the ware as loaded, water included, kg; absent: by volume. 0 is an empty kiln.</param>
/// <param name="KilogramsFurniture">Mass of shelves and posts, kg; absent: by volume.</param>
/// <param name="ThickestMillimetres">Thickest wall of the ware, mm; only the limits on ramps use it.</param>
/// <param name="Ware">Whether the clay still holds its bound water; absent: green.</param>
/// <param name="Dryness">How much free water green ware holds; absent: bone dry. Bisqued ware holds what its glaze left.</param>
internal sealed record KilnLoad(
    double? KilogramsWare = null,
    double? KilogramsFurniture = null,
    double? ThickestMillimetres = null,
    WareStage? Ware = null,
    Dryness? Dryness = null);

/// <summary>Whether the clay was fired before.</summary>
internal enum WareStage
{
    /// <summary>Never fired: the clay gives off its bound water in this firing.</summary>
    Green,

    /// <summary>Fired before, glazed or not.</summary>
    Bisqued,
}

/// <summary>How much free water ware holds. Its mass shares are rows of kiln-defaults.</summary>
internal enum Dryness
{
    /// <summary>No cold feel to the cheek; what the air of the room leaves in clay.</summary>
    BoneDry,

    /// <summary>Stiff, cold to the touch.</summary>
    LeatherHard,

    /// <summary>As thrown.</summary>
    Wet,
}
