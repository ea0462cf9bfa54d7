using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>What pieces do to each other in one firing: glazes that want different cones, and vapours that colour neighbours.</summary>
internal static class Neighbours
{
    /// <summary>Glazes of one load may be best this many whole cones apart.</summary>
    public const int ConesApart = 1;

    /// <summary>The best cone of the piece's glaze, the most fluid where there are several; null for bare ware.</summary>
    public static int? BestStep(Piece piece)
    {
        int? best = null;
        foreach (var item in piece.Coats)
        {
            if (item.Coat is { Melts: true, Best: { } cone } && (best is null || cone.Step < best)) best = cone.Step;
        }

        return best;
    }

    /// <summary>What the piece gives off in this firing that reaches others.</summary>
    public static EnumSet<Fume> GivenOff(Piece piece, PlannedFiring firing) => Collect(piece, firing, static c => c.GivesOff);

    /// <summary>What spoils the piece in this firing.</summary>
    public static EnumSet<Fume> SpoiledBy(Piece piece, PlannedFiring firing) => Collect(piece, firing, static c => c.SpoiledBy);

    /// <summary>The first of the two neighbouring best cones that suit most glazes; null when all glazes are near enough.</summary>
    /// <param name="bests">Best step of each glaze, with how many pieces have it.</param>
    /// <param name="cone">The cone of the firing: of equally good choices the nearer one is taken.</param>
    public static int? Window(IReadOnlyCollection<(int Step, int Pieces)> bests, PotterCone cone)
    {
        if (bests.Count == 0 || bests.Max(b => b.Step) - bests.Min(b => b.Step) <= ConesApart) return null;
        return bests.Select(b => b.Step).Distinct()
            .OrderByDescending(w => bests.Where(b => InWindow(b.Step, w)).Sum(b => b.Pieces))
            .ThenBy(w => Math.Abs((2 * w) + ConesApart - (2 * cone.Step)))
            .ThenBy(w => w)
            .First();
    }

    /// <summary>True when a glaze is near enough to the others.</summary>
    public static bool InWindow(int? best, int window) => best is null || (best >= window && best <= window + ConesApart);

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
