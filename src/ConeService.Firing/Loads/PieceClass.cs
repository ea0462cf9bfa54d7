using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;

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

    /// <summary>What to do with each of them; null where nothing has to be changed.</summary>
    public Message? Instead { get; set; }

    /// <summary>Number of the suggested firing that takes them; null where none does.</summary>
    public int? SuggestedFiring { get; set; }

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

    /// <summary>The reasons as they are told of one of them: the same, at its own place.</summary>
    public IReadOnlyList<Reason> ReasonsOf(Piece member) => ReferenceEquals(member, First) || Reasons.Count == 0
        ? Reasons
        : [.. Reasons.Select(r => r with { Pointer = member.At + r.Pointer[First.At.Length..] })];

    /// <summary>
    /// Where body and coats would each be mended by another cone, the reasons advise the one firing that suits them all.
    /// </summary>
    public void AgreeOnInstead()
    {
        if (Instead is not { } one || SuggestedFiring is null) return;
        if (Reasons.Count(r => IsOfCone(r)) < 2) return;
        Reasons = [.. Reasons.Select(r => IsOfCone(r) ? ReasonMaker.Advising(r, one) : r)];

        static bool IsOfCone(Reason r) => r is { Instead: not null, Severity: > ReasonSeverity.Note } && Judgement.IsOfCone(r.Code);
    }

    /// <summary>Takes the verdict.</summary>
    public void Judged(Judgement judgement) => (Reasons, Verdict) = (judgement.Reasons, (Verdict)(int)judgement.Worst);

    /// <summary>Says otherwise that the firing may have lost its zero: its neighbours can show that it has not.</summary>
    public void RetellMixUp(Message message, Message instead) =>
        Reasons =
        [
            .. Reasons.Select(r => r.Message.Code is "loads.cone-mix-up" or "loads.cone-mix-up-degrees"
                ? ReasonMaker.Retold(r, message, instead)
                : r),
        ];

    /// <summary>Adds what the neighbours do.</summary>
    public void Add(Reason reason)
    {
        Reasons = Judgement.InOrder(Reasons.Append(reason));
        if ((int)reason.Severity > (int)Verdict) Verdict = (Verdict)(int)reason.Severity;
    }
}
