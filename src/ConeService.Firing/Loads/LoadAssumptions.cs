using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Firing.Loads;

/// <summary>What a check takes for granted about ware it has not seen; said once for all pieces.</summary>
internal static class LoadAssumptions
{
    public static IEnumerable<Assumption> Of(Load load)
    {
        if (load.Pieces.Any(p => p.Use is null))
            yield return new("use", "not stated", "Pieces without a use are judged as ware; nothing is promised for food, and only a leach test tells.");
        if (load.Pieces.Any(p => p is { Thickness: null, State: PieceState.BoneDry }))
            yield return new("thickestMillimetres", "12 or less", "Raw pieces without a thickness are taken to have ordinary walls.");
        if (load.Firing.MeltsGlazes && load.Pieces.Any(p => p is { State: PieceState.Bisqued, Body: { MaturesInBisque: true, Mature: { } m } } && load.Firing.Cone.IsBelow(m.Min)))
            yield return new("state", "bisqued within the range of its body", "Bodies that mature in the bisque are taken to have had the bisque they need.");
    }
}
