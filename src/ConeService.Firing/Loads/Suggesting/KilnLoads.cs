using ConeService.Data;
using ConeService.Firing.Room;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>
/// How many loads of a kiln pieces take. Where its room and the size of each piece are known, by layers of shelves, as plans load; in a
/// bisque, where nobody told how pieces stand in one another, and by older packages, by their volume; else one.
/// </summary>
internal static class KilnLoads
{
    /// <summary>How many loads, and how full the kilns are, %: above 100 it takes several. Null where that is not known.</summary>
    public static (int Loads, decimal Percent)? Of(LoadTables tables, Kiln kiln, PlannedFiring firing, IReadOnlyList<Piece> pieces)
    {
        if (firing.Kind != FiringKind.Bisque && RoomOf(tables, kiln) is { } room && Slots(room, pieces) is { } slots
            && FewestLoads.Of(room.Room, slots) is var (loads, last))
        {
            return (loads, (100 * (loads - 1)) + (last / 100m));
        }

        return LoadRoom.PercentFull(tables, kiln, firing, pieces) is { } full
            ? (Math.Max(1, (int)decimal.Ceiling(full / 100)), full)
            : null;
    }

    /// <summary>The room of a kiln in layers; null where it is not known.</summary>
    public static MeasuredRoom? RoomOf(LoadTables tables, Kiln kiln)
    {
        if (tables.RoomFactors is not { } factors || kiln.Interior is not { Width: { } width, Depth: { } depth } inside) return null;
        var shelves = MeasuredRoom.Shelves(factors, inside.Height, width, depth, kiln.IsRound, kiln.Shelves);
        return MeasuredRoom.Of(factors, inside.Height, width, depth, kiln.IsRound, shelves, null);
    }

    private static List<(int Count, Slot Slot)>? Slots(MeasuredRoom room, IReadOnlyList<Piece> pieces)
    {
        var slots = new List<(int, Slot)>(pieces.Count);
        foreach (var piece in pieces)
        {
            if (piece.Size is not { Width: { } width } size) return null;
            slots.Add((piece.Count, room.Slot(new(size.Height, width, size.IsRound ? null : size.Depth), bisque: false, null)));
        }

        return slots;
    }
}
