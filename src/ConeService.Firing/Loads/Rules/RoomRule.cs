using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>The piece fits in with room above it and around it. Shelves and posts are not known here.</summary>
internal sealed class RoomRule : IPieceRule
{
    // So many times as tall as it is thick a piece is a rod; practice.
    private const int Slender = 8;

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
        if (LiesDown(c, size, room, free))
        {
            var sticks = c.IsGlazed && c.Firing.Kind != FiringKind.Bisque;
            judgement.Find(ReasonCode.TooTall, sticks ? ReasonSeverity.Review : ReasonSeverity.Note)?.Because(LoadRuleIds.RoomAbove, null,
                sticks
                    ? Message.Of("loads.lies-on-glaze", ("height", size.Height), ("room", room.Height))
                    : Message.Of("loads.lies-down", ("height", size.Height), ("room", room.Height)),
                sticks ? Message.Of("loads.lay-it-on-bare-side") : Message.Of("loads.lay-it-down"));
            return;
        }

        var severity = size.Height > room.Height ? ReasonSeverity.Refuse : ReasonSeverity.Review;
        judgement.Find(ReasonCode.TooTall, severity)?.Because(LoadRuleIds.RoomAbove, null,
            Message.Of(
                "loads.too-tall", ("height", size.Height), ("room", room.Height), ("free", free), ("most", room.Height - free)),
            Message.Of("loads.taller-kiln"));
    }

    // A rod or a narrow tile goes in lying; a tall pot would sag or crack so.
    private static bool LiesDown(PieceCase c, Size size, Size room, decimal free)
    {
        if (size is not { Width: { } width, Depth: { } depth } || room is not { Width: { } roomWidth, Depth: { } roomDepth }) return false;
        var around = 2 * c.Tables.Heat(c.Kiln.Heat).ClearanceMillimetres;
        var (thicker, thinner) = (decimal.Max(width, depth), decimal.Min(width, depth));
        return size.Height >= Slender * thicker
            && thinner <= room.Height - free
            && size.Height <= decimal.Max(roomWidth, roomDepth) - around
            && thicker <= decimal.Min(roomWidth, roomDepth) - around;
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
