using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>The piece fits in with room above it and around it. Shelves and posts are not known here.</summary>
internal sealed class RoomRule : IPieceRule
{
    public void Judge(PieceCase c, ReasonSink into)
    {
        if (c.Piece.Size is not { } size || c.Kiln.Interior is not { } room) return;
        var above = c.Book.Figure(LoadRuleIds.RoomAbove);
        if (size.Height > room.Height - above)
        {
            into.Add(ReasonCode.TooTall, size.Height > room.Height ? ReasonSeverity.Refuse : ReasonSeverity.Review, LoadRuleIds.RoomAbove, null,
                $"The piece is {size.Height} mm tall and the kiln {room.Height} mm inside: with {above} mm free above it, {room.Height - above} mm is the most.", $"Use a taller kiln, or fire the piece in parts.");
        }

        if (size is not { Width: { } width, Depth: { } depth } || room is not { Width: { } roomWidth, Depth: { } roomDepth }) return;
        var around = 2 * c.Book.Heat(c.Kiln.Heat).ClearanceMillimetres;
        var (over, under) = (decimal.Max(width, depth), decimal.Min(width, depth));
        var (most, least) = (decimal.Max(roomWidth, roomDepth), decimal.Min(roomWidth, roomDepth));
        if (over <= most - around && under <= least - around) return;
        into.Add(ReasonCode.TooTall, over > most || under > least ? ReasonSeverity.Refuse : ReasonSeverity.Review, c.Kiln.Heat == KilnHeat.Electric ? LoadRuleIds.RoomToElements : LoadRuleIds.RoomToWalls, null,
            $"The piece is {over} by {under} mm and the kiln {most} by {least} mm inside: with {around / 2} mm free on each side it does not fit.", $"Use a wider kiln.");
    }
}
