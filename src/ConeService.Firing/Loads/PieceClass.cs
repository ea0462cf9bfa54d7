using ConeService.Contract.Loads;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Loads;

/// <summary>Pieces that differ in name and number only: judged once, placed together.</summary>
internal sealed class PieceClass
{
    private readonly List<(Piece Piece, int Place)> members = [];

    private PieceClass(Piece first) => First = first;

    /// <summary>One of them; all are alike to every rule.</summary>
    public Piece First { get; }

    /// <summary>All of them, with their place in the answer.</summary>
    public IReadOnlyList<(Piece Piece, int Place)> Members => members;

    /// <summary>Why, worst first.</summary>
    public IReadOnlyList<Reason> Reasons { get; private set; } = [];

    /// <summary>The verdict on each of them.</summary>
    public Verdict Verdict { get; private set; }

    /// <summary>Joins pieces that are alike; ordered by what they are and not by where they stood, so that order changes nothing.</summary>
    public static List<PieceClass> Group(IReadOnlyList<Piece> pieces)
    {
        var classes = new Dictionary<string, PieceClass>(StringComparer.Ordinal);
        for (var i = 0; i < pieces.Count; i++)
        {
            if (!classes.TryGetValue(pieces[i].Key, out var c)) classes[pieces[i].Key] = c = new(pieces[i]);
            c.members.Add((pieces[i], i));
        }

        return [.. classes.Values.OrderBy(c => c.First.Key, StringComparer.Ordinal)];
    }

    /// <summary>Takes the verdict.</summary>
    public void Judged(Judgement judgement) => (Reasons, Verdict) = (judgement.Reasons, (Verdict)(int)judgement.Worst);

    /// <summary>Says otherwise that the firing may have lost its zero: its neighbours can show that it has not.</summary>
    public void RetellMixUp(Message message, Message instead) =>
        Reasons =
        [
            .. Reasons.Select(r => r.Message.Code is "loads.cone-mix-up" or "loads.cone-mix-up-degrees"
                ? r with { Message = message, Instead = instead }
                : r),
        ];

    /// <summary>Adds what the neighbours do.</summary>
    public void Add(Reason reason)
    {
        Reasons = Judgement.InOrder(Reasons.Append(reason));
        if ((int)reason.Severity > (int)Verdict) Verdict = (Verdict)(int)reason.Severity;
    }
}
