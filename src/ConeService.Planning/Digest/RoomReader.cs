using ConeService.Contract.Kilns;
using ConeService.Contract.Plans;
using ConeService.Contract.Problems;
using ConeService.Planning.Model;
using ConeService.Planning.Requests;
using ConeService.Planning.Room;
using Problem = ConeService.Planning.Model.Problem;

namespace ConeService.Planning.Digest;

/// <summary>Reads the room of kilns, and what pieces take of it.</summary>
internal sealed class RoomReader(RoomFactors factors, List<PlanFinding> findings, List<PlanAssumption> assumed)
{
    private readonly Numbers numbers = new(findings);

    /// <summary>The room of a kiln; null where it is not known, which is a finding.</summary>
    public ReadRoom? Room(PlanKiln sent, string pointer)
    {
        if (sent.Kiln?.Interior is not { } inside)
        {
            findings.Add(new(FindingCodes.MemberMissing, pointer + "/kiln/interior"));
            return null;
        }

        var count = findings.Count;
        var height = numbers.Millimetres(inside.HeightMillimetres, pointer + "/kiln/interior/heightMillimetres");
        var width = numbers.Millimetres(inside.WidthMillimetres, pointer + "/kiln/interior/widthMillimetres");
        var depth = numbers.Millimetres(inside.DepthMillimetres, pointer + "/kiln/interior/depthMillimetres");
        var diameter = numbers.Millimetres(inside.DiameterMillimetres, pointer + "/kiln/interior/diameterMillimetres");
        if (height is null || (diameter ?? width) is null)
        {
            if (findings.Count == count) findings.Add(new(FindingCodes.MemberMissing, pointer + "/kiln/interior"));
            return null;
        }

        var (across, along) = (diameter ?? width!.Value, diameter ?? depth ?? width!.Value);
        var usable = (int)(height.Value - factors.Lid);
        var shelf = Shelves(sent.Kiln.Shelves, across, along, diameter is not null, usable, pointer);
        if (usable <= shelf.Thickness)
        {
            findings.Add(new(FindingCodes.NumberOutOfRange, pointer + "/kiln/interior/heightMillimetres", height.ToString()));
            return null;
        }

        var usual = shelf.IsRound ? RoomFactors.Round : RoomFactors.Rectangular;
        if (sent.FillingFactor is null) assumed.Add(new(pointer + "/fillingFactor", Moments.Text(usual)));
        var factor = numbers.Within(sent.FillingFactor, 0.3, 0.9, usual, pointer + "/fillingFactor");
        var area = across * along * (diameter is null ? 1 : (decimal)RoomFactors.Disc) * (height.Value - factors.Lid) * factors.MostVolume;
        return new(new(usable, shelf.Thickness, shelf.Layers), shelf, factor, (double)area);
    }

    /// <summary>What a piece takes of a room.</summary>
    /// <param name="room">The room.</param>
    /// <param name="size">Its size.</param>
    /// <param name="bisque">True in a bisque, where pieces may touch and be stacked.</param>
    /// <param name="stack">How it may be stacked.</param>
    public Slot Slot(ReadRoom room, PieceSize size, bool bisque, ReadStack? stack)
    {
        var apart = bisque ? 0 : (double)factors.Apart;
        var (width, depth) = ((double)size.Width + apart, (double)(size.Depth ?? size.Width) + apart);
        var plain = size.Height + factors.Above;
        if (plain + room.Room.Shelf > room.Room.Height || !LiesOn(room.Shelf, (double)size.Width, (double)(size.Depth ?? size.Width), size.Depth is null)) return default;
        var high = bisque && stack is { Count: > 1 } ? HowHigh(room.Room, plain, stack) : 1;
        var area = width * depth * (size.Depth is null ? Math.PI / 4 : 1) / high;
        var share = (int)Math.Min(Problem.Whole, Math.Ceiling(Problem.Whole * area / (room.Shelf.Area * room.Factor)));
        // So many alike to a layer, and no fraction of one.
        share = Problem.Whole / (Problem.Whole / share);
        var height = (int)Math.Ceiling(plain + (high > 1 ? (high - 1) * (decimal)stack!.StepMillimetres : 0));
        var volume = (double)(size.Width * (size.Depth ?? size.Width)) * RoomFactors.Disc
            * (bisque ? (double)size.Height / RoomFactors.BisqueStacks : (double)(size.Height + factors.Above) + room.Shelf.Stated);
        return new(height, share, (int)Math.Ceiling(volume / room.MostVolume * 1000 * Problem.Whole));
    }

    private static int HowHigh(KilnRoom room, decimal plain, ReadStack stack)
    {
        var high = 1;
        while (high < stack.Count && plain + (high * (decimal)stack.StepMillimetres) + room.Shelf <= room.Height) high++;
        return high;
    }

    private static bool LiesOn(ReadShelf shelf, double width, double depth, bool isDisc) =>
        shelf.IsRound
            ? (isDisc ? width : Math.Sqrt((width * width) + (depth * depth))) <= shelf.Width
            : Math.Max(width, depth) <= Math.Max(shelf.Width, shelf.Depth) && Math.Min(width, depth) <= Math.Min(shelf.Width, shelf.Depth);

    private ReadShelf Shelves(KilnShelves? sent, decimal across, decimal along, bool isRound, int usable, string pointer)
    {
        var at = pointer + "/kiln/shelves";
        var width = sent is null ? null : numbers.Millimetres(sent.WidthMillimetres, at + "/widthMillimetres");
        var depth = sent is null ? null : numbers.Millimetres(sent.DepthMillimetres, at + "/depthMillimetres");
        var diameter = sent is null ? null : numbers.Millimetres(sent.DiameterMillimetres, at + "/diameterMillimetres");
        var stated = sent is null ? null : numbers.Millimetres(sent.ThicknessMillimetres, at + "/thicknessMillimetres");
        var thickness = (int)Math.Ceiling(stated ?? RoomFactors.ShelfThickness);
        if (stated is null) assumed.Add(new(at + "/thicknessMillimetres", Moments.Text(thickness)));
        var beside = sent is null ? 1 : numbers.Count(sent.PerLayer, 20, at + "/perLayer");
        var most = Math.Max(1, usable / (RoomFactors.LowestLayer + thickness));
        var layers = sent is null || sent.Layers.IsAbsent ? most : numbers.Count(sent.Layers, 100, at + "/layers");
        if (sent is null || sent.Layers.IsAbsent) assumed.Add(new(at + "/layers", Moments.Text(most)));
        var around = 2 * factors.Side;
        if ((diameter ?? width) is null)
        {
            assumed.Add(new(at, "the floor"));
            return isRound
                ? new(thickness, layers, true, (double)(across - around), (double)(across - around), 1, stated)
                : new(thickness, layers, false, (double)(across - around), (double)(along - around), 1, stated);
        }

        // Ware may lie across shelves that lie side by side.
        return diameter is { } round
            ? new(thickness, layers, true, (double)round, (double)round, beside, stated)
            : new(thickness, layers, false, (double)width! * beside, (double)(depth ?? width)!, 1, stated);
    }
}

/// <summary>The room of a kiln with its shelves.</summary>
/// <param name="Room">The room in whole numbers.</param>
/// <param name="Shelf">A layer.</param>
/// <param name="Factor">How much of it ware covers in practice.</param>
/// <param name="MostVolume">The most that the load check lets in, mm³.</param>
internal sealed record ReadRoom(KilnRoom Room, ReadShelf Shelf, double Factor, double MostVolume);

/// <summary>A layer of shelves.</summary>
/// <param name="Thickness">mm.</param>
/// <param name="Layers">How many there are.</param>
/// <param name="IsRound">True for a disc.</param>
/// <param name="Width">Width or diameter, mm.</param>
/// <param name="Depth">Depth or diameter, mm.</param>
/// <param name="Beside">How many round ones lie side by side.</param>
/// <param name="StatedThickness">Thickness as sent; null where none was.</param>
internal sealed record ReadShelf(
    int Thickness, int Layers, bool IsRound, double Width, double Depth, int Beside, decimal? StatedThickness)
{
    /// <summary>Area of a layer, mm².</summary>
    public double Area => Width * Depth * Beside * (IsRound ? Math.PI / 4 : 1);

    /// <summary>Thickness as the load check knows it, mm.</summary>
    public double Stated => (double)(StatedThickness ?? 0);
}

/// <summary>The size of a piece, mm.</summary>
/// <param name="Height">Height.</param>
/// <param name="Width">Width, or diameter.</param>
/// <param name="Depth">Depth; null for round ware.</param>
internal sealed record PieceSize(decimal Height, decimal Width, decimal? Depth);

/// <summary>How a piece may be stacked in a bisque.</summary>
/// <param name="Count">How many at most.</param>
/// <param name="StepMillimetres">How much each one more adds to the height, mm.</param>
internal sealed record ReadStack(int Count, double StepMillimetres);
