using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>Says why no firing accepts pieces as they are.</summary>
internal sealed class Unplaceable(LoadTables tables, PieceJudge judge, Load load)
{
    public UnplacedPieces Explain(PieceClass pieces)
    {
        var reasons = Nearest(pieces).Where(r => r.Severity > ReasonSeverity.Note).ToList();
        if (reasons.Count == 0) reasons = [.. pieces.Reasons.Where(r => r.Severity > ReasonSeverity.Note)];
        return new([.. pieces.Members.Select(m => m.Piece.Id)], Why(pieces.First, reasons), reasons);
    }

    // The firing that the ware is ready for, at the cone its glaze or else its body likes best.
    private IReadOnlyList<Reason> Nearest(PieceClass pieces)
    {
        var piece = pieces.First;
        if (piece.State < PieceState.BoneDry || piece.Unknown.Count > 0 || Placement.ReadyFor(piece) is not [var kind, ..])
            return pieces.Reasons;
        var needs = tables.Kind(kind);
        var wanted = piece.Coats.Aggregate(
            needs.Atmospheres, (all, x) => x.Coat.Atmospheres.Overlaps(all) ? x.Coat.Atmospheres.Common(all) : all);
        var atmosphere = wanted.Has(load.Firing.Atmosphere) ? load.Firing.Atmosphere : wanted.Items().First();
        var cone = kind == FiringKind.Bisque
            ? piece.Body?.BisqueMax
            : piece.Coats.Select(x => x.Coat.Best).FirstOrDefault(b => b is not null) ?? piece.Body?.Mature?.Best;
        var kiln = KilnSuitability.Suiting(tables, needs, atmosphere);
        return judge.Judge(piece, kiln, new(needs, cone ?? load.Firing.Cone, atmosphere)).Reasons;
    }

    private static Message Why(Piece piece, List<Reason> reasons)
    {
        if (Conflict(piece) is { } conflict) return conflict;
        return reasons.Count == 0
            ? Message.Of("loads.no-firing-accepts")
            : Message.Of("loads.no-firing-accepts-because", ("reason", reasons[0].Message));
    }

    private static Message? Conflict(Piece piece)
    {
        if (piece.Unknown.Count > 0 || piece.State is PieceState.Wet or PieceState.LeatherHard or PieceState.GlazeFired) return null;
        var ranges = piece.Coats
            .Where(x => x.Coat.Melts)
            .Select(x => (x.Coat.Name, Min: (PotterCone?)x.Coat.Min, x.Coat.Max))
            .ToList();
        if (piece.Body is { Mature: { } mature } body)
        {
            var wasMatured = body.MaturesInBisque && piece.State == PieceState.Bisqued;
            ranges.Insert(0, (body.Name, wasMatured ? null : mature.Min, mature.Max));
        }

        foreach (var lower in ranges)
        {
            foreach (var upper in ranges)
            {
                if (lower.Max is null || upper.Min is null || !lower.Max.IsBelow(upper.Min)) continue;
                return Message.Of(
                    "loads.no-cone-suits-both",
                    ("lower", lower.Name), ("upper", upper.Name), ("max", lower.Max.Text), ("min", upper.Min.Text));
            }
        }

        return null;
    }
}
