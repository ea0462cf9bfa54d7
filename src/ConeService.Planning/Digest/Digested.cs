using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Contract.Texts;
using ConeService.Planning.Model;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Digest;

/// <summary>A request as a problem, with what is needed to tell its plan in the words of the request.</summary>
/// <param name="Problem">The problem.</param>
/// <param name="Moments">Minutes as moments.</param>
/// <param name="Kilns">The kilns.</param>
/// <param name="Pieces">The pieces, in the order sent.</param>
/// <param name="Accepted">By kiln, entry of the menu and stage: whether the load check accepts it there, room or not.</param>
/// <param name="Wares">By stage: the ware before that firing.</param>
/// <param name="Warnings">What is told all the same.</param>
/// <param name="Assumed">What was left out.</param>
/// <param name="Schedules">What the fit said, and says of what is in a firing.</param>
/// <param name="Class">The dampest and the thickest of the class of a ware.</param>
/// <param name="Staffed">When somebody is there; null: always.</param>
internal sealed record Digested(
    Problem Problem,
    Moments Moments,
    IReadOnlyList<DigestedKiln> Kilns,
    IReadOnlyList<DigestedPiece> Pieces,
    IReadOnlyList<bool[][]> Accepted,
    IReadOnlyList<Ware> Wares,
    IReadOnlyList<PlanFinding> Warnings,
    IReadOnlyList<PlanAssumption> Assumed,
    UsualSchedules Schedules,
    Func<SlowWare, SlowWare> Class,
    Spans? Staffed)
{
    /// <summary>Item of a piece by its id; −1 where nothing of it can be planned.</summary>
    public IReadOnlyDictionary<string, int> ItemsById { get; } = ById(Pieces, (p, _) => p.Item ?? -1);

    /// <summary>Place of a piece by its id.</summary>
    public IReadOnlyDictionary<string, int> PlacesById { get; } = ById(Pieces, (_, place) => place);

    private static Dictionary<string, int> ById(IReadOnlyList<DigestedPiece> pieces, Func<DigestedPiece, int, int> of)
    {
        var found = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < pieces.Count; i++) found.TryAdd(pieces[i].Id, of(pieces[i], i));
        return found;
    }
}

/// <summary>A kiln.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Programmes">What it fires: of each entry of its menu as many as ware asks for.</param>
internal sealed record DigestedKiln(string Id, IReadOnlyList<DigestedFiring> Programmes);

/// <summary>A firing of a menu, as it is fired for ware of some dampness and thickness.</summary>
/// <param name="Entry">Entry of the menu.</param>
/// <param name="Sent">As sent.</param>
/// <param name="Ware">The dampest and the thickest that may be in it.</param>
/// <param name="Hours">What it takes.</param>
/// <param name="Cost">What it costs, in 1/100.</param>
internal sealed record DigestedFiring(int Entry, MenuFiring Sent, SlowWare Ware, FiringHours Hours, long Cost);

/// <summary>A piece of the request.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Count">How many alike.</param>
/// <param name="Item">Its item; null where nothing of it can be planned.</param>
/// <param name="Stages">How many firings it asks for.</param>
/// <param name="Refused">Place of the firing, from 0, that no menu accepts; null where each is accepted.</param>
/// <param name="Reasons">What the load check says of that.</param>
/// <param name="TooBig">True where that firing is accepted and no kiln has the room.</param>
/// <param name="Needs">What would take it, in a sentence; null where each firing is accepted and has the room.</param>
/// <param name="Needed">The firings that would accept it; empty where no firing would, or where it is the room that lacks.</param>
internal sealed record DigestedPiece(
    string Id, int Count, int? Item, int Stages, int? Refused, IReadOnlyList<Reason> Reasons, bool TooBig, Message? Needs,
    IReadOnlyList<NeededFiring> Needed);

/// <summary>Something that was left out of a request.</summary>
/// <param name="Pointer">Where it would stand.</param>
/// <param name="Value">What was taken, as it would be sent.</param>
/// <param name="Ware">Damp or thick ware that it was taken for; usual where it holds for all.</param>
internal sealed record PlanAssumption(string Pointer, string Value, SlowWare Ware = default);
