using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>Says why no firing accepts pieces as they are.</summary>
internal sealed class Unplaceable(LoadBook book, PieceJudge judge, Load load)
{
    public UnplacedPieces Explain(PieceClass pieces)
    {
        var reasons = Nearest(pieces).Where(r => r.Severity > ReasonSeverity.Note).ToList();
        if (reasons.Count == 0) reasons = [.. pieces.Reasons.Where(r => r.Severity > ReasonSeverity.Note)];
        return new([.. pieces.Members.Select(m => m.Piece.Id)], Message(pieces.First, reasons), reasons);
    }

    // The firing that the ware is ready for, at the cone its glaze or else its body likes best.
    private IReadOnlyList<Reason> Nearest(PieceClass pieces)
    {
        var piece = pieces.First;
        if (piece.State < PieceState.BoneDry || piece.Unknown.Count > 0 || Placement.ReadyFor(piece) is not [var kind, ..]) return pieces.Reasons;
        var needs = book.Kind(kind);
        var wanted = piece.Coats.Aggregate(needs.Atmospheres, (all, x) => x.Coat.Atmospheres.Overlaps(all) ? x.Coat.Atmospheres.Common(all) : all);
        var atmosphere = wanted.Has(load.Firing.Atmosphere) ? load.Firing.Atmosphere : wanted.Words().First();
        var cone = kind == FiringKind.Bisque ? piece.Body?.BisqueMax : piece.Coats.Select(x => x.Coat.Best).FirstOrDefault(b => b is not null) ?? piece.Body?.Mature?.Best;
        return judge.Judge(piece, Kilns.Suiting(book, needs, atmosphere), new(needs, cone ?? load.Firing.Cone, atmosphere)).Reasons;
    }

    private static string Message(Piece piece, List<Reason> reasons)
    {
        if (Conflict(piece) is { } conflict) return conflict;
        return reasons.Count == 0 ? "No firing accepts it as it is." : $"No firing accepts it as it is. {reasons[0].Message}";
    }

    private static string? Conflict(Piece piece)
    {
        if (piece.Unknown.Count > 0 || piece.State is PieceState.Wet or PieceState.LeatherHard or PieceState.GlazeFired) return null;
        var ranges = piece.Coats.Where(x => x.Coat.Melts).Select(x => (x.Coat.Name, Min: (ConeMark?)x.Coat.Min, x.Coat.Max)).ToList();
        if (piece.Body is { Mature: { } mature } body) ranges.Insert(0, (body.Name, body.MaturesInBisque && piece.State == PieceState.Bisqued ? null : mature.Min, mature.Max));
        foreach (var lower in ranges)
        {
            foreach (var upper in ranges)
            {
                if (lower.Max is not null && upper.Min is not null && lower.Max.IsBelow(upper.Min))
                    return $"No firing suits {lower.Name} and {upper.Name} together: the one stands cone {lower.Max} at most, the other needs cone {upper.Min} at least.";
            }
        }

        return null;
    }
}
