using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Loads.Suggesting;

namespace ConeService.Firing.Loads;

/// <summary>
/// Whether all pieces together can go in: each takes at least the area it stands on, times its height with the shelf above it. What a
/// kiln holds of that in practice is the load rule load-within-room.
/// </summary>
internal static class LoadRoom
{
    // Bisque stands in one another and on one another: load-within-room names it in words.
    private const int BisqueStacks = 2;

    // A circle takes so much of the square about it; whether ware is round is not told, and this is the less.
    private const decimal Round = 0.785m;

    /// <summary>Ids of the load rules that it rests on, in a package that has them.</summary>
    public static IReadOnlyList<string> RestsOn(Dataset dataset) =>
        PieceJudge.VersionOf(dataset) >= new Version(1, 7)
            ? [LoadRuleIds.LoadWithinRoom, LoadRuleIds.ShelfAbove, LoadRuleIds.RoomAbove]
            : [];

    /// <summary>Says where the load can't go in, or hardly.</summary>
    public static void Judge(LoadTables tables, Load load, IReadOnlyList<PieceClass> classes, Judgement judgement)
    {
        if (tables.FindRule(LoadRuleIds.LoadWithinRoom) is not { ValueMin: { } practice, ValueMax: { } most }) return;
        var going = classes.Where(c => c.Verdict != Contract.Loads.Verdict.Refuse).SelectMany(c => c.Members).Select(m => m.Piece).ToList();
        if (Takes(tables, load.Kiln, load.Firing, going) is not { Share: var share } || share <= practice) return;
        var refused = share > most;
        // The same count as that of the firings: by layers of shelves where that is known, and never fewer than by volume.
        var loads = Math.Max(
            (int)decimal.Ceiling(share / most), KilnLoads.Of(tables, load.Kiln, load.Firing, going)?.Loads ?? 1);
        judgement.Find(ReasonCode.LoadTooLarge, refused ? ReasonSeverity.Refuse : ReasonSeverity.Review)?.Because(
            LoadRuleIds.LoadWithinRoom, null,
            refused
                ? Message.Of(
                    "loads.load-too-large",
                    ("pieces", going.Sum(p => p.Count)), ("loads", loads))
                : Message.Of(
                    "loads.load-hardly-fits",
                    ("pieces", going.Sum(p => p.Count)), ("percent", (int)decimal.Round(100 * share / most))),
            Message.Of("loads.several-loads"));
    }

    /// <summary>How full a kiln is, % of the most that it holds in practice; null where room or sizes are not known.</summary>
    public static decimal? PercentFull(LoadTables tables, Kiln kiln, PlannedFiring firing, IReadOnlyList<Piece> pieces) =>
        tables.FindRule(LoadRuleIds.LoadWithinRoom) is { ValueMax: { } most }
        && Takes(tables, kiln, firing, pieces) is { IsWhole: true, Share: var share }
            ? 100 * share / most
            : null;

    // The share of the room that the pieces with a size take, and whether all have one.
    private static (decimal Share, bool IsWhole)? Takes(
        LoadTables tables, Kiln kiln, PlannedFiring firing, IReadOnlyList<Piece> pieces)
    {
        if (kiln.Interior is not { Width: { } width, Depth: { } depth } room) return null;
        var height = room.Height - tables.Figure(LoadRuleIds.RoomAbove);
        if (height <= 0) return null;
        var bisque = firing.Kind == FiringKind.Bisque;
        var above = bisque ? 0 : tables.Figure(LoadRuleIds.ShelfAbove) + kiln.ShelfThickness;
        var (taken, whole) = (0m, true);
        foreach (var piece in pieces)
        {
            if (piece.Size is not { Width: { } across, Depth: { } along } size) whole = false;
            else taken += piece.Count * across * along * Round * (size.Height + above);
        }

        var area = width * depth * (kiln.IsRound ? Round : 1);
        return (taken / (area * height * (bisque ? BisqueStacks : 1)), whole);
    }
}
