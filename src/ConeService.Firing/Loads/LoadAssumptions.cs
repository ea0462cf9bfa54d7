using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads;

/// <summary>What a check takes for granted about ware it has not seen; said once for all pieces.</summary>
internal static class LoadAssumptions
{
    public static IEnumerable<Assumption> Of(Load load)
    {
        if (load.Pieces.Any(p => p.Use is null))
            yield return new("use", "not stated", Message.Of("loads.use-assumed"));
        if (load.Pieces.Any(p => p is { Thickness: null, State: PieceState.BoneDry }))
            yield return new("thickestMillimetres", "12 or less", Message.Of("loads.thickness-assumed"));
        if (load.Firing.MeltsGlazes && load.Pieces.Any(p => WasMaturedBefore(p, load.Firing)))
            yield return new("state", "bisqued within the range of its body", Message.Of("loads.bisque-assumed"));
    }

    private static bool WasMaturedBefore(Piece piece, PlannedFiring firing) =>
        piece is { State: PieceState.Bisqued, Body: { MaturesInBisque: true, Mature: { } mature } } && firing.Cone.IsBelow(mature.Min);
}
