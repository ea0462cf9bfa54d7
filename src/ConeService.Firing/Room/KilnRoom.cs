namespace ConeService.Firing.Room;

/// <summary>The room of a kiln, in whole numbers.</summary>
/// <param name="Height">Height for ware and shelves, mm, the clearance below the lid taken off.</param>
/// <param name="Shelf">Thickness of a shelf, mm.</param>
/// <param name="Layers">Layers of shelves that there are.</param>
internal sealed record KilnRoom(int Height, int Shelf, int Layers)
{
    /// <summary>A whole layer in the unit of <see cref="Slot.Share"/>.</summary>
    public const int WholeLayer = 10_000;

    /// <summary>The most that the load check lets into a kiln in the unit of <see cref="Slot.Volume"/>.</summary>
    public const long WholeVolume = 10_000_000;
}

/// <summary>What one piece takes of the room of a kiln.</summary>
/// <param name="Height">Height with the clearance above it, mm.</param>
/// <param name="Share">Share of a layer, in 1/10,000; 0: it does not go in.</param>
/// <param name="Volume">Share of the most that the load check lets into the kiln, in 1/10,000,000.</param>
internal readonly record struct Slot(int Height, int Share, int Volume);
