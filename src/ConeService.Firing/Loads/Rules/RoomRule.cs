using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>The piece fits in with room above it and around it. Shelves and posts are not known here.</summary>
internal sealed class RoomRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.RoomAbove, LoadRuleIds.RoomToElements, LoadRuleIds.RoomToWalls];

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Piece.Size is not { } size || c.Kiln.Interior is not { } room) return;
        Height(c, size, room, judgement);
        Width(c, size, room, judgement);
    }

    private static void Height(PieceCase c, Size size, Size room, Judgement judgement)
    {
        var free = c.Tables.Figure(LoadRuleIds.RoomAbove);
        if (size.Height <= room.Height - free) return;
        var severity = size.Height > room.Height ? ReasonSeverity.Refuse : ReasonSeverity.Review;
        judgement.Find(ReasonCode.TooTall, severity)?.Because(LoadRuleIds.RoomAbove, null,
            Message.Of(
                "loads.too-tall", ("height", size.Height), ("room", room.Height), ("free", free), ("most", room.Height - free)),
            Message.Of("loads.taller-kiln"));
    }

    private static void Width(PieceCase c, Size size, Size room, Judgement judgement)
    {
        if (size is not { Width: { } width, Depth: { } depth } || room is not { Width: { } roomWidth, Depth: { } roomDepth }) return;
        var free = c.Tables.Heat(c.Kiln.Heat).ClearanceMillimetres;
        var (longer, shorter) = (decimal.Max(width, depth), decimal.Min(width, depth));
        var (roomLonger, roomShorter) = (decimal.Max(roomWidth, roomDepth), decimal.Min(roomWidth, roomDepth));
        if (longer <= roomLonger - (2 * free) && shorter <= roomShorter - (2 * free)) return;
        var severity = longer > roomLonger || shorter > roomShorter ? ReasonSeverity.Refuse : ReasonSeverity.Review;
        judgement.Find(ReasonCode.TooTall, severity)?.Because(
            c.Kiln.Heat == KilnHeat.Electric ? LoadRuleIds.RoomToElements : LoadRuleIds.RoomToWalls, null,
            Message.Of(
                "loads.too-wide",
                ("longer", longer), ("shorter", shorter), ("roomLonger", roomLonger), ("roomShorter", roomShorter), ("free", free)),
            Message.Of("loads.wider-kiln"));
    }
}
