using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// A piece stands on its shelf, where the shelves of the kiln were told: over the edge by little whoever loads must see it, by more
/// it does not go in. Bisque may stand on edge or in other ware.
/// </summary>
internal sealed class ShelfRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.StandsOnShelf];

    public Version Since { get; } = new(1, 7);

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Piece.Size is not { Width: { } width, Depth: { } depth } size) return;
        var (longer, shorter) = (decimal.Max(width, depth), decimal.Min(width, depth));
        if (Shelf(c.Kiln) is not var (shelfLonger, shelfShorter, round)) return;
        var over = round && !size.IsRound
            ? (decimal)Math.Sqrt((double)((longer * longer) + (shorter * shorter))) - shelfLonger
            : decimal.Max(longer - shelfLonger, shorter - shelfShorter);
        if (over <= 0) return;
        var rule = c.Tables.Rule(LoadRuleIds.StandsOnShelf);
        var refused = over / 2 > rule.ValueMax && c.Firing.Kind != FiringKind.Bisque;
        judgement.Find(ReasonCode.TooTall, refused ? ReasonSeverity.Refuse : ReasonSeverity.Review)?.Because(
            LoadRuleIds.StandsOnShelf, null,
            Message.Of(
                "loads.over-the-shelf",
                ("longer", longer), ("shorter", shorter), ("round", round ? "yes" : "no"), ("shelfLonger", shelfLonger),
                ("shelfShorter", shelfShorter), ("over", decimal.Round(over / 2, 0, MidpointRounding.AwayFromZero))),
            refused ? Message.Of("loads.larger-shelf") : Message.Of("loads.foot-on-shelf"));
    }

    // Ware may lie across shelves that lie side by side, but not across round ones.
    private static (decimal Longer, decimal Shorter, bool Round)? Shelf(Kiln kiln)
    {
        if (kiln.Shelves is { Diameter: { } diameter }) return (diameter, diameter, true);
        if (kiln.Shelves is not { Width: { } width }) return null;
        var (across, along) = (width * kiln.Shelves.Beside, kiln.Shelves.Depth ?? width);
        return (decimal.Max(across, along), decimal.Min(across, along), false);
    }
}
