using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Loads.Suggesting;

namespace ConeService.Firing.Loads;

/// <summary>What a check takes for granted about ware it has not seen; said once for all pieces, of the first.</summary>
internal static class LoadAssumptions
{
    public static IEnumerable<Assumption> Of(LoadTables tables, Load load)
    {
        // Of a single piece nobody asks how many loads it takes.
        if (KilnLoads.RoomOf(tables, load.Kiln) is { } room && load.Pieces.Sum(p => p.Count) > 1)
        {
            if (load.Pieces.FirstOrDefault(p => p.Size?.Width is null) is { } unmeasured)
                yield return new(At(unmeasured, "size"), "goes into one load", Message.Of("loads.one-load-assumed"));
            else if (load.Kiln.Shelves is { Width: null, Diameter: null } && load.Firing.Kind != FiringKind.Bisque)
            {
                yield return new("/kiln/shelves", "the floor", Message.Of(
                    "loads.shelves-assumed", ("layers", room.Shelf.Layers), ("thickness", room.Shelf.Thickness)));
            }
        }

        if (load.Pieces.FirstOrDefault(p => p.Use is null) is { } used)
            yield return new(At(used, "use"), "not stated", Message.Of("loads.use-assumed"));
        if (load.Pieces.FirstOrDefault(p => p is { Thickness: null, State: PieceState.BoneDry }) is { } dry)
            yield return new(At(dry, "thickestMillimetres"), "12 or less", Message.Of("loads.thickness-assumed"));
        if (load.Firing.MeltsGlazes && load.Pieces.FirstOrDefault(p => WasMaturedBefore(p, load.Firing)) is { } bisqued)
            yield return new(At(bisqued, "state"), "bisqued within the range of its body", Message.Of("loads.bisque-assumed"));
    }

    private static string At(Piece piece, string member) => $"{piece.At}/{member}";

    private static bool WasMaturedBefore(Piece piece, PlannedFiring firing) =>
        piece is { IsTakenAsMatured: true, Body.Mature: { } mature } && firing.Cone.IsBelow(mature.Min);
}
