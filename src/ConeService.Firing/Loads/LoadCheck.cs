using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Firing.Cones;
using ConeService.Firing.Loads.Reading;
using ConeService.Firing.Loads.Suggesting;

namespace ConeService.Firing.Loads;

/// <summary>Answers: will this load survive? Rule by rule in docs/load-check.md.</summary>
internal sealed class LoadCheck
{
    private readonly LoadTables tables;

    /// <summary>Makes the check over a data package.</summary>
    public LoadCheck(ConeCharts charts) => tables = new(charts);

    /// <summary>Checks a load.</summary>
    /// <exception cref="RefusedException">The request can't be read; every finding is in it.</exception>
    public LoadAnswer Check(LoadRequest request) => Check(LoadReader.Read(tables, request));

    /// <summary>Checks one body with its coats in one firing.</summary>
    /// <exception cref="RefusedException">The request can't be read; every finding is in it.</exception>
    public PairingAnswer Check(PairingRequest request)
    {
        var answer = Check(LoadReader.Read(tables, request));
        return new(
            answer.DatasetVersion,
            answer.Verdict,
            answer.Pieces[0].Reasons,
            [.. answer.SuggestedFirings.Select(s => new PairingFiring(s.FiringKind, s.Cone, s.Atmosphere, s.KilnHeats))],
            [.. answer.Unplaced.Select(u => new PairingUnplaced(u.Message, u.Reasons))],
            answer.Cautions,
            answer.Basis,
            answer.Sources,
            // A pairing is a load of one piece, whose members stand in the body itself.
            [.. answer.Assumed.Select(a => a with { Field = a.Field.Replace("/pieces/0/", "/", StringComparison.Ordinal) })]);
    }

    private LoadAnswer Check(Load load)
    {
        // A judge remembers its last verdict, so that each check has its own.
        var judge = new PieceJudge(tables);
        var classes = PieceClass.Group(load.Pieces);
        foreach (var c in classes.Patiently()) c.Judged(judge.Judge(c.First, load.Kiln, load.Firing));
        var loadReasons = LoadJudge.Judge(tables, judge, load, classes);
        var (firings, unplaced, basis) = new Suggester(tables, judge, load).Suggest([.. classes.Where(c => c.Verdict != Verdict.Accept)]);

        var pieces = new PieceAnswer[load.Pieces.Count];
        foreach (var c in classes)
        {
            foreach (var (piece, place) in c.Members) pieces[place] = new(piece.Id, c.Verdict, c.Reasons);
        }

        var reasons = classes.SelectMany(c => c.Reasons).Concat(loadReasons).ToList();
        return new(
            tables.Dataset.VersionId,
            (Verdict)(int)reasons.Select(r => r.Severity).DefaultIfEmpty().Max(),
            pieces,
            new(loadReasons),
            firings,
            unplaced,
            basis,
            LoadCautions.Of(tables, load, classes),
            Basis.Printed,
            [.. reasons.SelectMany(r => r.Sources).Distinct().Order(StringComparer.Ordinal)],
            [.. load.Assumed, .. LoadAssumptions.Of(load)]);
    }
}
