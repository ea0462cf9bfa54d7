using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>What pieces do to each other in one firing: vapours colour neighbours.</summary>
internal static class Neighbours
{
    /// <summary>Glazes best this many whole cones apart need no word about their places.</summary>
    public const int ConesApart = 1;

    /// <summary>The best cone of the piece's glaze, the most fluid where there are several; null for bare ware.</summary>
    public static int? BestStep(Piece piece)
    {
        int? best = null;
        foreach (var item in piece.Coats)
        {
            if (item is { IsFired: false, Coat: { Melts: true, Best: { } cone } } && (best is null || cone.Step < best)) best = cone.Step;
        }

        return best;
    }

    /// <summary>What the piece gives off in this firing that reaches others.</summary>
    public static EnumSet<Fume> GivenOff(Piece piece, PlannedFiring firing) => Collect(piece, firing, static c => c.GivesOff);

    /// <summary>What spoils the piece in this firing.</summary>
    public static EnumSet<Fume> SpoiledBy(Piece piece, PlannedFiring firing) => Collect(piece, firing, static c => c.SpoiledBy);

    private static EnumSet<Fume> Collect(Piece piece, PlannedFiring firing, Func<CoatOnPiece, EnumSet<Fume>> of)
    {
        if (!firing.MeltsGlazes) return default;
        var all = default(EnumSet<Fume>);
        foreach (var item in piece.Coats) all = all.With(of(item));
        return all.Common(firing.IsReduction ? Travelling : TravellingInOxidation);
    }

    private static readonly EnumSet<Fume> Travelling = new([Fume.Chrome, Fume.Copper]);
    private static readonly EnumSet<Fume> TravellingInOxidation = new([Fume.Chrome]);
}
