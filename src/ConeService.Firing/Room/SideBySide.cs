namespace ConeService.Firing.Room;

/// <summary>
/// How many pieces alike stand side by side on a shelf. Arrangements that are easily laid are tried: rows, rows set off by half a
/// piece, and on a round shelf rings. What is counted can stand so; for some sizes a cleverer arrangement holds one more.
/// </summary>
internal static class SideBySide
{
    /// <summary>Discs on a round shelf.</summary>
    /// <param name="shelf">Diameter of the shelf, mm.</param>
    /// <param name="disc">Diameter of a disc, clearance included, mm.</param>
    public static int OnRound(double shelf, double disc)
    {
        if (disc > shelf) return 0;
        if (2 * disc > shelf) return 1;
        // A ring along the edge, and within it the same again.
        var ring = (int)Math.Floor((Math.PI / Math.Asin(disc / (shelf - disc))) + 1e-9);
        return ring + OnRound(shelf - (2 * disc), disc);
    }

    /// <summary>Discs on a rectangular shelf.</summary>
    /// <param name="width">Width of the shelf, mm.</param>
    /// <param name="depth">Its depth, mm.</param>
    /// <param name="disc">Diameter of a disc, clearance included, mm.</param>
    public static int OnRectangle(double width, double depth, double disc) => Math.Max(Rows(width, depth, disc), Rows(depth, width, disc));

    /// <summary>Rectangles on a rectangular shelf, all turned the same way.</summary>
    public static int OnRectangle(double width, double depth, double across, double along) =>
        Math.Max(Times(width, across) * Times(depth, along), Times(width, along) * Times(depth, across));

    /// <summary>Rectangles on a round shelf, in rows.</summary>
    /// <param name="shelf">Diameter of the shelf, mm.</param>
    /// <param name="across">Width of a rectangle, mm.</param>
    /// <param name="along">Its depth, mm.</param>
    public static int OnRound(double shelf, double across, double along) =>
        Math.Max(InRows(shelf, across, along), InRows(shelf, along, across));

    // Rows along one side; the rows are spread over the other, and where they come closer than a disc they are set off by half.
    private static int Rows(double length, double breadth, double disc)
    {
        if (disc > length || disc > breadth) return 0;
        var most = Times(length, disc) * Times(breadth, disc);
        for (var rows = 2; ; rows++)
        {
            var apart = (breadth - disc) / (rows - 1);
            // A row and the next but one must not touch either.
            if (rows > 2 && 2 * apart < disc) return most;
            var step = apart >= disc ? disc : Math.Max(disc, 2 * Math.Sqrt((disc * disc) - (apart * apart)));
            var full = Times(length - disc, step) + 1;
            var off = length - disc < step / 2 ? 0 : Times(length - disc - (step / 2), step) + 1;
            most = Math.Max(most, ((rows + 1) / 2 * full) + (rows / 2 * off));
            if (rows == 2 && 2 * apart < disc) return most;
        }
    }

    private static int InRows(double shelf, double across, double along)
    {
        var most = 0;
        // A row lies on the middle, or two meet there.
        foreach (var first in new[] { -along / 2, 0 })
        {
            var count = 0;
            for (var low = first; low + along <= shelf / 2; low += along) count += Chord(low);
            for (var high = first; high - along >= -shelf / 2; high -= along) count += Chord(high - along);
            most = Math.Max(most, count);
        }

        return most;

        int Chord(double low)
        {
            var far = Math.Max(Math.Abs(low), Math.Abs(low + along));
            return far > shelf / 2 ? 0 : Times(2 * Math.Sqrt((shelf * shelf / 4) - (far * far)), across);
        }
    }

    private static int Times(double length, double part) => part <= 0 ? int.MaxValue : (int)Math.Floor((length / part) + 1e-9);
}
