using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>Says why no firing accepts pieces as they are.</summary>
internal sealed class Unplaceable(LoadTables tables, PieceJudge judge, Load load, FiringMenu menu)
{
    public UnplacedPieces Explain(PieceClass pieces)
    {
        var reasons = Nearest(pieces).Where(r => r.Severity > ReasonSeverity.Note).ToList();
        if (reasons.Count == 0) reasons = [.. pieces.Reasons.Where(r => r.Severity > ReasonSeverity.Note)];
        var ids = pieces.Members.Select(m => m.Piece.Id).ToList();
        if (NotOffered(pieces) is { } elsewhere)
        {
            pieces.Instead = elsewhere;
            return new(ids, elsewhere, [.. pieces.Reasons.Where(r => r.Severity > ReasonSeverity.Note)]);
        }

        pieces.Instead = ToDo(pieces.First, reasons);
        return new(ids, Why(pieces.First, reasons), reasons);
    }

    // What the studio neither fires nor can fire may be fired elsewhere.
    private Message? NotOffered(PieceClass pieces)
    {
        if (ReferenceEquals(menu, tables.Menu)) return null;
        var anywhere = Placement.Of(tables, judge, pieces, load.Firing.Kind, tables.Menu);
        if (anywhere.IsEmpty) return null;
        var firing = anywhere.Items.Items().Select(i => tables.Menu.Items[i].Firing)
            .MinBy(f => (f.Atmosphere == load.Firing.Atmosphere ? 0 : 1, Math.Abs(f.Cone.Step - anywhere.Ideal)))!;
        return Message.Of(
            "loads.not-offered",
            ("offered", load.Offered.Count > 0 ? "yes" : "no"), ("kind", firing.Needs.Kind), ("firing", firing.Needs.Name),
            ("cone", firing.Cone.Text), ("atmosphere", EnumWords.Word(firing.Atmosphere)));
    }

    private static Message ToDo(Piece piece, List<Reason> reasons) => Conflict(piece) is { } conflict
        ? Message.Of("loads.instead-other-material", ("conflict", conflict))
        : reasons.Select(r => r.Instead).FirstOrDefault(i => i is not null) ?? Message.Of("loads.look-at-piece");

    // The firing booked where that kind takes the piece and its cone is not what is wrong; else that kind, or the one that the ware is
    // ready for, at the cone its glaze or else its body likes best.
    private IReadOnlyList<Reason> Nearest(PieceClass pieces)
    {
        var piece = pieces.First;
        if (piece.State < PieceState.BoneDry || piece.Unknown.Count > 0) return pieces.Reasons;
        var booked = load.Firing.Needs.Takes.Has(piece.State);
        if (booked && !pieces.Reasons.Any(r => r.Severity > ReasonSeverity.Note && Judgement.IsOfCone(r.Code))) return pieces.Reasons;
        var ready = Placement.ReadyFor(piece);
        if (!booked && ready.Count == 0) return pieces.Reasons;
        var kind = booked ? load.Firing.Kind : ready[0];
        var needs = tables.Kind(kind);
        var wanted = piece.Coats.Aggregate(
            needs.Atmospheres, (all, x) => x.Coat.Atmospheres.Overlaps(all) ? x.Coat.Atmospheres.Common(all) : all);
        var atmosphere = wanted.Has(load.Firing.Atmosphere) ? load.Firing.Atmosphere : wanted.Items().First();
        var cone = kind == FiringKind.Bisque
            ? piece.Body?.BisqueMax
            : kind == FiringKind.Overglaze
            ? piece.Coats.Where(x => x.Coat.IsOverglaze).Select(x => x.Coat.Best).FirstOrDefault(b => b is not null)
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
            // What its bisque is to mature no glaze fire has to.
            var below = piece.WasMatured || (body.MaturesInBisque && piece.State == PieceState.Bisqued);
            ranges.Insert(0, (body.Name, below ? null : mature.Min, mature.Max));
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
