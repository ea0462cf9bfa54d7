using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>One rule on a piece in a firing. It must not depend on the other pieces.</summary>
internal interface IPieceRule
{
    /// <summary>Ids of the load rules that its reasons rest on; a package without one of them is refused.</summary>
    IReadOnlyList<string> RestsOn { get; }

    /// <summary>
    /// The minor version of the package that brought what it rests on: a package of before is judged without it. Null for what was
    /// there with the first loads.
    /// </summary>
    Version? Since => null;

    /// <summary>Adds what it finds.</summary>
    void Judge(PieceCase c, Judgement judgement);
}

/// <summary>A piece in a firing.</summary>
internal readonly record struct PieceCase(LoadTables Tables, Kiln Kiln, PlannedFiring Firing, Piece Piece)
{
    /// <summary>
    /// True when this firing has to do something for the coat. In an overglaze firing the glaze below was fired before; in a
    /// bisque colours and slips only go along.
    /// </summary>
    public bool Concerns(Coat coat) => Firing.Kind switch
    {
        FiringKind.Overglaze => coat.IsOverglaze || Piece.State != PieceState.GlazeFired,
        FiringKind.Bisque => coat.Kind is not (CoatKind.Underglaze or CoatKind.Slip or CoatKind.TerraSigillata),
        _ => true,
    };

    /// <summary>The same, but for a coat that was fired before and does not melt again at this cone.</summary>
    public bool Judges(CoatOnPiece item) =>
        Concerns(item.Coat) && !(item.IsFired && !item.WasUnderfired && Firing.Cone.IsBelow(item.Coat.Min));

    /// <summary>True when a coat that melts is, or may be, where food touches.</summary>
    public bool IsGlazedInside
    {
        get
        {
            foreach (var item in Piece.Coats)
            {
                if (item.Coat.Melts && item.Where != CoatWhere.Outside) return true;
            }

            return false;
        }
    }

    /// <summary>True when a coat of the piece melts to a glass in the main fire.</summary>
    public bool IsGlazed
    {
        get
        {
            foreach (var coat in Piece.Coats)
            {
                if (coat.Coat.Melts) return true;
            }

            return false;
        }
    }
}
