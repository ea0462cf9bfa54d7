namespace ConeService.Firing.Room;

/// <summary>How many loads of one kiln pieces take: tall first, then wide, each load filled before the next.</summary>
internal static class FewestLoads
{
    /// <summary>How many loads, and how full the last one is, in 1/10,000; null where a piece does not go in at all.</summary>
    /// <param name="room">The room of the kiln.</param>
    /// <param name="pieces">Pieces, with what one of them takes.</param>
    public static (int Loads, int LastFill)? Of(KilnRoom room, IEnumerable<(int Count, Slot Slot)> pieces)
    {
        var left = pieces.OrderByDescending(p => p.Slot.Height).ThenByDescending(p => p.Slot.Share).ToList();
        if (left.Exists(p => p.Slot.Share == 0)) return null;
        var packing = new Packing(room);
        var loads = 0;
        while (left.Count > 0)
        {
            Patience.Check();
            loads++;
            packing.Clear();
            for (var i = 0; i < left.Count; i++)
            {
                var (count, slot) = left[i];
                var goes = packing.MostOf(slot, count);
                if (goes == 0) continue;
                packing.Add(slot, goes);
                left[i] = (count - goes, slot);
            }

            // By volume a single piece can be too much.
            if (packing.IsEmpty) return null;
            left.RemoveAll(p => p.Count == 0);
        }

        return (loads, packing.Fill);
    }
}
