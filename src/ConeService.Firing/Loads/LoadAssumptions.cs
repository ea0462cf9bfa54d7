using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads;

/// <summary>What a check takes for granted about ware it has not seen; said once for all pieces, of the first.</summary>
internal static class LoadAssumptions
{
    public static IEnumerable<Assumption> Of(Load load)
    {
        if (load.Pieces.FirstOrDefault(p => p.Use is null) is { } used)
            yield return new(At(used, "use"), "not stated", Message.Of("loads.use-assumed"));
        if (load.Pieces.FirstOrDefault(p => p is { Thickness: null, State: PieceState.BoneDry }) is { } dry)
            yield return new(At(dry, "thickestMillimetres"), "12 or less", Message.Of("loads.thickness-assumed"));
        if (load.Firing.MeltsGlazes && load.Pieces.FirstOrDefault(p => WasMaturedBefore(p, load.Firing)) is { } bisqued)
            yield return new(At(bisqued, "state"), "bisqued within the range of its body", Message.Of("loads.bisque-assumed"));
    }

    private static string At(Piece piece, string member) => $"{piece.At}/{member}";

    private static bool WasMaturedBefore(Piece piece, PlannedFiring firing) =>
        piece is { State: PieceState.Bisqued, Body: { MaturesInBisque: true, Mature: { } mature } } && firing.Cone.IsBelow(mature.Min);
}
