using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>The whole cone to which a piece would best be fired.</summary>
internal static class IdealStep
{
    // Firings that finish the ware, raw or bisqued: there the body is to mature. In a bisque, and in the smoke, it is not.
    private static readonly EnumSet<FiringKind> Finishing =
        new([FiringKind.Glaze, FiringKind.Single, FiringKind.Salt, FiringKind.Soda, FiringKind.Wood]);

    /// <summary>Its step.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="kinds">The kinds of firing that it could go into.</param>
    public static int Of(Piece piece, IReadOnlyList<FiringKind> kinds)
    {
        // What lies on fired glaze decides, whatever glaze lies below it.
        if (piece.State == PieceState.GlazeFired && Overglaze(piece) is { } overglaze) return overglaze;
        return Neighbours.BestStep(piece) ?? Overglaze(piece) ?? Vapour(piece) ?? OfBody(piece, kinds);
    }

    private static int? Overglaze(Piece piece)
    {
        foreach (var item in piece.Coats)
        {
            if (item is { IsFired: false, Coat: { IsOverglaze: true, Best: { } best } }) return best.Step;
        }

        return null;
    }

    private static int? Vapour(Piece piece)
    {
        foreach (var item in piece.Coats)
        {
            if (item is { IsFired: false, Coat: { Kind: CoatKind.Vapour, Best: { } best } }) return best.Step;
        }

        return null;
    }

    private static int OfBody(Piece piece, IReadOnlyList<FiringKind> kinds)
    {
        if (piece.Body is not { } body) return 0;
        if (body.Mature is { } mature && (piece.State != PieceState.BoneDry || IsFinished(kinds))) return mature.Best.Step;
        return (body.BisqueMin.Step + body.BisqueMax.Step) / 2;
    }

    private static bool IsFinished(IReadOnlyList<FiringKind> kinds)
    {
        foreach (var kind in kinds)
        {
            if (!Finishing.Has(kind)) return false;
        }

        return kinds.Count > 0;
    }
}
