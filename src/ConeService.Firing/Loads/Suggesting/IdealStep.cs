using ConeService.Data;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>The whole cone to which a piece would best be fired.</summary>
internal static class IdealStep
{
    /// <summary>Its step.</summary>
    public static int Of(Piece piece)
    {
        // What lies on fired glaze decides, whatever glaze lies below it.
        if (piece.State == PieceState.GlazeFired && Overglaze(piece) is { } overglaze) return overglaze;
        return Neighbours.BestStep(piece) ?? Overglaze(piece) ?? OfBody(piece);
    }

    private static int? Overglaze(Piece piece)
    {
        foreach (var item in piece.Coats)
        {
            if (item is { IsFired: false, Coat: { IsOverglaze: true, Best: { } best } }) return best.Step;
        }

        return null;
    }

    private static int OfBody(Piece piece)
    {
        if (piece.Body is not { } body) return 0;
        return piece.State == PieceState.BoneDry || body.Mature is null
            ? (body.BisqueMin.Step + body.BisqueMax.Step) / 2
            : body.Mature.Best.Step;
    }
}
