using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>What a piece has been through.</summary>
/// <param name="Hottest">The hottest cone it is known to have had; null when none is known.</param>
/// <param name="Bisque">The hottest cone of its bisques; null when none is known.</param>
/// <param name="Said">The state it is said to be in, where its firings make it another; else null.</param>
internal sealed record PieceHistory(PotterCone? Hottest, PotterCone? Bisque, PieceState? Said)
{
    /// <summary>True when all of its firings are told, from the first on, each with its cone: hotter it has never been.</summary>
    public bool IsWhole { get; init; }

    /// <summary>Nothing is known.</summary>
    public static PieceHistory None { get; } = new(null, null, null);

    private static readonly EnumSet<FiringKind> Smoking = new([FiringKind.Bisque, FiringKind.Pit, FiringKind.Saggar]);

    /// <summary>The state that firings leave a piece in; null without firings.</summary>
    /// <param name="firings">The kinds of its firings.</param>
    public static PieceState? StateAfter(IEnumerable<FiringKind> firings)
    {
        PieceState? state = null;
        foreach (var kind in firings)
        {
            if (!Smoking.Has(kind)) return PieceState.GlazeFired;
            state = PieceState.Bisqued;
        }

        return state;
    }

    /// <summary>
    /// Says of each coat whether it has been fired. What nobody said follows from the state: of glaze-fired ware all that melts
    /// has been fired but for the last where there are several, which lies over them fresh; what goes on fired glaze is fresh.
    /// </summary>
    public static List<CoatOnPiece> Settle(List<CoatOnPiece> coats, PieceState state, bool overglazeFiring)
    {
        if (!coats.Exists(c => c.SaidFired is not null) && state != PieceState.GlazeFired) return coats;
        var last = coats.FindLastIndex(c => c.Coat.Melts);
        var several = coats.Count(c => c.Coat.Melts) > 1;
        for (var i = 0; i < coats.Count; i++)
        {
            var fired = coats[i].SaidFired
                ?? (state == PieceState.GlazeFired
                    && (coats[i].Coat.Melts
                        ? overglazeFiring || !several || i != last
                        : !coats[i].Coat.AppliedOn.Has(PieceState.GlazeFired)));
            if (fired) coats[i] = coats[i] with { IsFired = true };
        }

        return coats;
    }
}
