namespace ConeService.Firing.Room;

/// <summary>The room of a kiln with its shelves, and what pieces take of it.</summary>
/// <param name="Room">The room in whole numbers.</param>
/// <param name="Shelf">A layer.</param>
/// <param name="Factor">How much of it ware covers in practice.</param>
/// <param name="MostVolume">The most that the load check lets in, mm³.</param>
/// <param name="Factors">Figures of the model.</param>
internal sealed record MeasuredRoom(KilnRoom Room, ShelfLayer Shelf, double Factor, double MostVolume, RoomFactors Factors)
{
    /// <summary>The room that an interior and its shelves make; null where nothing can stand in it.</summary>
    /// <param name="factors">Figures of the model.</param>
    /// <param name="height">Inner height, mm.</param>
    /// <param name="across">Width, or diameter, mm.</param>
    /// <param name="along">Depth, or diameter, mm.</param>
    /// <param name="isRound">True for a round chamber.</param>
    /// <param name="shelf">Its layers of shelves.</param>
    /// <param name="factor">How much of a layer ware covers; null: as usual.</param>
    public static MeasuredRoom? Of(
        RoomFactors factors, decimal height, decimal across, decimal along, bool isRound, ShelfLayer shelf, double? factor)
    {
        var usable = (int)(height - factors.Lid);
        if (usable <= shelf.Thickness) return null;
        var most = across * along * (isRound ? (decimal)RoomFactors.Disc : 1) * (height - factors.Lid) * factors.MostVolume;
        return new(
            new(usable, shelf.Thickness, shelf.Layers), shelf, factor ?? (shelf.IsRound ? factors.Round : factors.Rectangular),
                (double)most,
            factors);
    }

    /// <summary>The layers of shelves of a kiln; where nobody told of any they cover the floor, as many as could be used.</summary>
    /// <param name="factors">Figures of the model.</param>
    /// <param name="height">Inner height, mm.</param>
    /// <param name="across">Width, or diameter, mm.</param>
    /// <param name="along">Depth, or diameter, mm.</param>
    /// <param name="isRound">True for a round chamber.</param>
    /// <param name="told">What was told of its shelves.</param>
    public static ShelfLayer Shelves(
        RoomFactors factors, decimal height, decimal across, decimal along, bool isRound, ToldShelves told)
    {
        var thickness = Thickness(factors, told.Thickness);
        var layers = told.Layers ?? MostLayers(factors, height, thickness);
        var around = 2 * factors.Side;
        // Ware may lie across shelves that lie side by side.
        return told switch
        {
            { Diameter: { } round } => new(thickness, layers, true, (double)round, (double)round, told.Beside, told.Thickness),
            { Width: { } width } => new(
                thickness, layers, false, (double)width * told.Beside, (double)(told.Depth ?? width), 1, told.Thickness),
            _ when isRound => new(thickness, layers, true, (double)(across - around), (double)(across - around), 1, told.Thickness),
            _ => new(thickness, layers, false, (double)(across - around), (double)(along - around), 1, told.Thickness),
        };
    }

    /// <summary>Thickness of a shelf, whole mm.</summary>
    public static int Thickness(RoomFactors factors, decimal? stated) => (int)Math.Ceiling(stated ?? factors.ShelfThickness);

    /// <summary>As many layers as low ware could use.</summary>
    public static int MostLayers(RoomFactors factors, decimal height, int thickness) =>
        Math.Max(1, (int)(height - factors.Lid) / (factors.LowestLayer + thickness));

    /// <summary>What a piece takes; nothing where it does not go in.</summary>
    /// <param name="size">Its size.</param>
    /// <param name="bisque">True in a bisque, where pieces may touch and be stacked.</param>
    /// <param name="stack">How it may be stacked there; null: not.</param>
    public Slot Slot(PieceSize size, bool bisque, Stack? stack)
    {
        var plain = size.Height + Factors.Above;
        if (plain + Room.Shelf > Room.Height || !Shelf.Holds(size)) return default;
        var apart = bisque ? 0 : (double)Factors.Apart;
        var high = bisque && stack is { Count: > 1 } ? HowHigh(plain, stack) : 1;
        var (width, depth) = ((double)size.Width + apart, (double)(size.Depth ?? size.Width) + apart);
        var area = width * depth * (size.Depth is null ? Math.PI / 4 : 1);
        // So many alike to a layer, and no fraction of one; no more than stand side by side.
        var alike = Math.Max(1, (int)Math.Floor((Shelf.Area * Factor / area) + 1e-9));
        if (Factors.CountsSideBySide) alike = Math.Min(alike, Shelf.MostSideBySide(size, apart));
        var share = (int)Math.Ceiling(KilnRoom.WholeLayer / alike / (double)high);
        var height = (int)Math.Ceiling(plain + (high > 1 ? (high - 1) * (decimal)stack!.StepMillimetres : 0));
        var volume = (double)(size.Width * (size.Depth ?? size.Width)) * RoomFactors.Disc
            * (bisque ? (double)size.Height / Factors.BisqueStacks : (double)(size.Height + Factors.Above) + Shelf.Stated);
        return new(height, share, (int)Math.Ceiling(volume / MostVolume * KilnRoom.WholeVolume));
    }

    private int HowHigh(decimal plain, Stack stack)
    {
        var high = 1;
        while (high < stack.Count && plain + (high * (decimal)stack.StepMillimetres) + Room.Shelf <= Room.Height) high++;
        return high;
    }
}

/// <summary>What was told of the shelves of a kiln.</summary>
/// <param name="Layers">How many layers there are; null: not told.</param>
/// <param name="Beside">How many shelves lie side by side.</param>
/// <param name="Thickness">Thickness of a shelf, mm; null: not told.</param>
/// <param name="Width">Width, mm; null: not told.</param>
/// <param name="Depth">Depth, mm; null: as wide.</param>
/// <param name="Diameter">Diameter of round ones, mm; null: not told.</param>
internal sealed record ToldShelves(int? Layers, int Beside, decimal? Thickness, decimal? Width, decimal? Depth, decimal? Diameter)
{
    /// <summary>Nothing was told.</summary>
    public static ToldShelves Nothing { get; } = new(null, 1, null, null, null, null);
}

/// <summary>A layer of shelves.</summary>
/// <param name="Thickness">mm.</param>
/// <param name="Layers">How many there are.</param>
/// <param name="IsRound">True for a disc.</param>
/// <param name="Width">Width or diameter, mm.</param>
/// <param name="Depth">Depth or diameter, mm.</param>
/// <param name="Beside">How many round ones lie side by side.</param>
/// <param name="StatedThickness">Thickness as sent; null where none was.</param>
internal sealed record ShelfLayer(int Thickness, int Layers, bool IsRound, double Width, double Depth, int Beside, decimal? StatedThickness)
{
    /// <summary>Area of a layer, mm².</summary>
    public double Area => Width * Depth * Beside * (IsRound ? Math.PI / 4 : 1);

    /// <summary>Thickness as the load check knows it, mm.</summary>
    public double Stated => (double)(StatedThickness ?? 0);

    /// <summary>Whether a piece can lie on it at all.</summary>
    public bool Holds(PieceSize size)
    {
        var (width, depth) = ((double)size.Width, (double)(size.Depth ?? size.Width));
        return IsRound
            ? (size.Depth is null ? width : Math.Sqrt((width * width) + (depth * depth))) <= Width
            : Math.Max(width, depth) <= Math.Max(Width, Depth) && Math.Min(width, depth) <= Math.Min(Width, Depth);
    }

    /// <summary>How many pieces alike stand on it side by side.</summary>
    /// <param name="size">Size of one that it holds.</param>
    /// <param name="apart">Free between them, mm; none is needed at the edge.</param>
    public int MostSideBySide(PieceSize size, double apart)
    {
        var (width, depth) = ((double)size.Width + apart, (double)(size.Depth ?? size.Width) + apart);
        var most = (IsRound, size.Depth is null) switch
        {
            (true, true) => SideBySide.OnRound(Width + apart, width),
            (true, false) => SideBySide.OnRound(Width + apart, width, depth),
            (false, true) => SideBySide.OnRectangle(Width + apart, Depth + apart, width),
            _ => SideBySide.OnRectangle(Width + apart, Depth + apart, width, depth),
        };
        return Beside * Math.Max(1, most);
    }
}

/// <summary>The size of a piece, mm.</summary>
/// <param name="Height">Height.</param>
/// <param name="Width">Width, or diameter.</param>
/// <param name="Depth">Depth; null for round ware.</param>
internal sealed record PieceSize(decimal Height, decimal Width, decimal? Depth);

/// <summary>How a piece may be stacked in a bisque.</summary>
/// <param name="Count">How many at most.</param>
/// <param name="StepMillimetres">How much each one more adds to the height, mm.</param>
internal sealed record Stack(int Count, double StepMillimetres);
