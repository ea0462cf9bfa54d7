using ConeService.Contract.Loads;
using ConeService.Firing.Loads.Reading;

namespace ConeService.Planning.Digest;

/// <summary>A piece as the load check sees it before one of its firings.</summary>
/// <param name="Piece">Without id, count and reference.</param>
/// <param name="Key">The same as text: equal for equal ware.</param>
/// <param name="Coats">Its coats and its state as text: what company is decided by.</param>
internal sealed record Ware(PieceRequest Piece, string Key, string Coats)
{
    /// <summary>A piece as sent.</summary>
    public static Ware Of(PieceRequest piece)
    {
        var bare = piece with { Id = default, Count = default, Ref = default };
        return new(bare, PieceKey.Of(bare), PieceKey.Of(new(Coats: bare.Coats, State: bare.State)));
    }

    /// <summary>The same after a firing, with the coats of the next.</summary>
    /// <param name="kind">Kind of the firing that it had.</param>
    /// <param name="cone">Its cone.</param>
    /// <param name="coats">Coats that were put on then.</param>
    public Ware After(string kind, string cone, IEnumerable<CoatRequest?> coats)
    {
        var fired = (Piece.Coats ?? []).Select(c => c is null ? null : c with { State = "fired", FiredCone = cone });
        return Of(Piece with
        {
            State = kind == Bisque ? "bisqued" : "glaze-fired",
            Coats = [.. fired, .. coats],
            EarlierFirings = [.. Piece.EarlierFirings ?? [], new EarlierFiringRequest(kind, cone)],
        });
    }

    /// <summary>The piece with an id.</summary>
    public PieceRequest Named(int number) => Piece with { Id = number.ToString(System.Globalization.CultureInfo.InvariantCulture) };

    /// <summary>The kind of firing after which ware is bisqued.</summary>
    public const string Bisque = "bisque";
}
