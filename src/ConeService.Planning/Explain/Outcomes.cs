using ConeService.Contract.Plans;
using ConeService.Planning.Digest;

namespace ConeService.Planning.Explain;

/// <summary>What becomes of each piece, and what is left undone.</summary>
internal sealed class Outcomes
{
    private readonly Digested digested;
    private readonly WaitReasons reasons;
    private readonly List<UndonePieces> undone = [];

    /// <summary>Tells it.</summary>
    public Outcomes(Digested digested, Course course, WaitReasons reasons)
    {
        (this.digested, this.reasons) = (digested, reasons);
        var byPiece = course.Singles.SelectMany(s => s).ToLookup(s => s.Piece);
        Pieces = [.. digested.Pieces.Select((p, i) => Of(p, [.. byPiece[i]]))];
    }

    /// <summary>The pieces, in the order sent.</summary>
    public IReadOnlyList<PieceOutcome> Pieces { get; }

    /// <summary>What is left undone.</summary>
    public IReadOnlyList<UndonePieces> Undone => undone;

    private PieceOutcome Of(DigestedPiece piece, List<Single> singles)
    {
        var moments = digested.Moments;
        var stays = singles.SelectMany(s => s.Stays).ToList();
        var firings = stays.GroupBy(y => (y.Firing, y.Number)).OrderBy(g => g.Key.Number).ThenBy(g => g.Key.Firing)
            .Select(g => new PieceFiring(g.Key.Firing + 1, g.Key.Number + 1, g.Count())).ToList();
        var late = 0;
        if (piece.Item is { } index)
        {
            var item = digested.Problem.Items[index];
            late = singles.Count(s => item is { DueBinds: true, Due: { } due } && (s.Next < item.StageCount || s.Stays[^1].End > due));
            foreach (var group in singles.Where(s => s.Next < item.StageCount).GroupBy(s => (s.Next, s.Available)).OrderBy(g => g.Key))
            {
                Add(new(
                    piece.Id, group.Count(), group.Key.Next + 1, reasons.Binding(item.FirstStage + group.Key.Next, group.Key.Available),
                        []));
            }
        }

        if (piece.Refused is { } refused)
        {
            var there = piece.Item is null ? piece.Count : singles.Count(s => s.Next == refused);
            var reason = piece.TooBig ? WaitReason.TooBigForKiln : WaitReason.NoFiringAccepts;
            if (there > 0) undone.Add(new(piece.Id, there, refused + 1, reason, piece.Reasons)
            {
                Needs = piece.Needs,
                NeededFirings = piece.Needed,
            });
        }

        var isDone = singles.Count > 0 && singles.TrueForAll(s => s.Next == piece.Stages);
        return new(
            piece.Id, piece.Count, firings, isDone ? moments.At(singles.Max(s => s.Stays[^1].End)) : null, late,
                [.. Waits(piece, singles)]);
    }

    // Of those that wait for the same firing of theirs for different reasons the count is told for each.
    private void Add(UndonePieces more)
    {
        var at = undone.FindIndex(u => u.Id == more.Id && u.Stage == more.Stage && u.Reason == more.Reason);
        if (at < 0) undone.Add(more);
        else undone[at] = undone[at] with { Count = undone[at].Count + more.Count };
    }

    private IEnumerable<PieceWait> Waits(DigestedPiece piece, List<Single> singles)
    {
        if (piece.Item is not { } index) yield break;
        var (problem, item) = (digested.Problem, digested.Problem.Items[index]);
        var waits = singles.SelectMany(s => s.Stays.Select(y => (y.Number, y.From, To: (int?)y.Load))
            .Concat(s.Next < item.StageCount ? [(s.Next, s.Available, null)] : []));
        foreach (var wait in waits.GroupBy(w => w).OrderBy(g => g.Key.Number).ThenBy(g => g.Key.From))
        {
            var (number, from, to) = (wait.Key.Number, Math.Max(0, wait.Key.From), wait.Key.To);
            if (from >= (to ?? problem.Horizon)) continue;
            var told = reasons.Of(item.FirstStage + number, from, to ?? problem.Horizon);
            if (told.Count == 0) continue;
            yield return new(
                number + 1, wait.Count(), digested.Moments.At(from), to is { } load ? digested.Moments.At(load) : null, told);
        }
    }
}
