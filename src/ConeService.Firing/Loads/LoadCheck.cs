using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Loads.Reading;
using ConeService.Firing.Loads.Suggesting;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Answers: will this load survive? Rule by rule in docs/load-check.md.</summary>
internal sealed class LoadCheck
{
    private readonly LoadTables tables;

    /// <summary>Makes the check over a data package.</summary>
    public LoadCheck(ConeCharts charts) => tables = new(charts);

    /// <summary>Checks a load.</summary>
    /// <param name="request">The load.</param>
    /// <param name="detail">How much is answered.</param>
    /// <exception cref="RefusedException">The request can't be read; every finding is in it.</exception>
    public LoadAnswer Check(LoadRequest request, LoadDetail detail = LoadDetail.Full) =>
        Check(LoadReader.Read(tables, request), detail);

    /// <summary>Reads a load, and judges nothing.</summary>
    /// <exception cref="RefusedException">The request can't be read; every finding is in it.</exception>
    public void Read(LoadRequest request) => LoadReader.Read(tables, request);

    /// <summary>The rules without sentences.</summary>
    public QuietCheck Quiet() => new(tables);

    /// <summary>Checks one body with its coats in one firing.</summary>
    /// <exception cref="RefusedException">The request can't be read; every finding is in it.</exception>
    public PairingAnswer Check(PairingRequest request)
    {
        var answer = Check(LoadReader.Read(tables, request), LoadDetail.Full);
        return new(
            answer.DatasetVersion,
            answer.Verdict,
            answer.Pieces[0].Reasons,
            [.. answer.SuggestedFirings.Select(s => new PairingFiring(s.FiringKind, s.Cone, s.Atmosphere, s.KilnHeats))],
            [.. answer.Unplaced.Select(u => new PairingUnplaced(u.Message, u.Reasons))],
            answer.Cautions,
            answer.Basis,
            answer.Sources,
            answer.Assumed,
            answer.Confidence,
            answer.Ref,
            answer.Pieces[0].Instead);
    }

    private LoadAnswer Check(Load load, LoadDetail detail)
    {
        // A judge remembers its last verdict, so that each check has its own.
        var judge = new PieceJudge(tables);
        var classes = PieceClass.Group(load.Pieces);
        foreach (var c in classes.Patiently()) c.Judged(judge.Judge(c.First, load.Kiln, load.Firing));
        var loadReasons = LoadJudge.Judge(tables, judge, load, classes);
        var suggestion = new Suggester(tables, judge, load).Suggest(classes);
        foreach (var c in classes) c.AgreeOnInstead();

        var reasons = classes.SelectMany(c => c.Reasons).Concat(loadReasons).ToList();
        var table = detail == LoadDetail.Verdicts ? new ReasonTable() : null;
        return new(
            tables.Dataset.VersionId,
            (Verdict)(int)reasons.Select(r => r.Severity).DefaultIfEmpty().Max(),
            Pieces(load, classes, table),
            new(loadReasons),
            suggestion.Firings,
            suggestion.Unplaced,
            suggestion.Basis,
            LoadCautions.Of(tables, load, classes),
            Basis.Printed,
            [.. reasons.SelectMany(r => r.Sources).Distinct().Order(StringComparer.Ordinal)],
            [.. load.Assumed, .. LoadAssumptions.Of(tables, load)],
            ConfidenceOrder.Weakest(
            [
                // What no reason names was held against rules that are practice, most of them.
                Confidence.CommonPractice,
                .. reasons.Select(r => r.Confidence),
                .. classes.SelectMany(c => Materials(c.First)).Select(m => m.Confidence).OfType<Confidence>(),
            ]),
            load.Ref,
            table?.Reasons ?? [],
            suggestion.KeepsBooked,
            suggestion.Firings.Sum(f => f.LoadsNeeded) + suggestion.BookedLoads);
    }

    private static PieceAnswer[] Pieces(Load load, IReadOnlyList<PieceClass> classes, ReasonTable? table)
    {
        var pieces = new PieceAnswer[load.Pieces.Count];
        foreach (var c in classes)
        {
            var numbers = table?.NumbersOf(c) ?? [];
            foreach (var (piece, place) in c.Members)
            {
                pieces[place] = table is null
                    ? new(piece.Id, c.Verdict, c.ReasonsOf(piece), piece.Ref, c.Instead, c.SuggestedFiring, numbers)
                    : new(piece.Id, c.Verdict, [], piece.Ref, null, c.SuggestedFiring, numbers);
            }
        }

        return pieces;
    }

    private static IEnumerable<Material> Materials(Piece piece) =>
        piece.Coats.Select(c => (Material)c.Coat).Concat(piece.Body is { } body ? [body] : []);
}
