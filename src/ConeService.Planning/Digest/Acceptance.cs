using System.Text.Json;
using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Planning.Digest;

/// <summary>
/// What the load check says, sort by sort, remembered: which ware a firing takes alone, and which ware may share it. One belongs to one
/// request and to what is asked about it; not for several threads.
/// </summary>
internal sealed class Acceptance(FiringReference reference)
{
    private readonly Dictionary<(string Firing, string Ware), Verdict> verdicts = [];
    private readonly Dictionary<(string Firing, string One, string Other), bool> together = [];
    private readonly HashSet<(string Firing, string Coats)> touched = [];

    /// <summary>A firing as text: equal for equal ones.</summary>
    public static string Key(Kiln kiln, MenuFiring firing) =>
        JsonSerializer.Serialize(kiln with { Id = default }) + Key(firing);

    private static string Key(MenuFiring firing) => $"{firing.FiringKind.Text} {firing.Cone.Text} {firing.Atmosphere.Text}";

    /// <summary>Judges wares that were not judged yet.</summary>
    /// <exception cref="RefusedException">A ware, the kiln or the firing can't be read; pieces are named by their place.</exception>
    public void Judge(Kiln kiln, MenuFiring firing, IReadOnlyList<Ware> wares)
    {
        var key = Key(kiln, firing);
        var missing = wares.Where(w => !verdicts.ContainsKey((key, w.Key))).DistinctBy(w => w.Key).ToList();
        foreach (var chunk in missing.Chunk(LoadLimits.MostPieces / 2))
        {
            Patience.Check();
            var answer = Check(kiln, firing, [.. chunk.Select((w, i) => w.Named(i))]);
            var reasons = answer.ReasonTable.ToDictionary(r => r.Number, r => r.Reason);
            for (var i = 0; i < chunk.Length; i++)
            {
                // What neighbours do is a matter of company.
                var own = answer.Pieces[i].ReasonNumbers.Select(n => reasons[n]).ToList();
                verdicts[(key, chunk[i].Key)] = (Verdict)(int)own
                    .Where(r => r.Code != ReasonCode.FumesOnNeighbours).Select(r => r.Severity).DefaultIfEmpty().Max();
                if (own.Exists(r => r.Code == ReasonCode.FumesOnNeighbours)) touched.Add((Key(firing), chunk[i].Coats));
            }
        }
    }

    /// <summary>What was judged of one ware alone.</summary>
    public Verdict Of(Kiln kiln, MenuFiring firing, Ware ware) => verdicts[(Key(kiln, firing), ware.Key)];

    /// <summary>What the load check says of one ware in a firing that need be on no menu; it is not remembered.</summary>
    public Verdict Judged(Kiln kiln, MenuFiring firing, Ware ware) => Check(kiln, firing, [ware.Named(0)]).Verdict;

    /// <summary>Why a firing does not accept a ware.</summary>
    public IReadOnlyList<Reason> Reasons(Kiln kiln, MenuFiring firing, Ware ware) =>
        [.. reference.Loads.Check(Load(kiln, firing, [ware.Named(0)])).Pieces[0].Reasons.Where(r => r.Severity > ReasonSeverity.Note)];

    /// <summary>
    /// Whether two wares, each accepted alone, may share a firing. Ware whose neighbours nothing was said against among all others is asked
    /// about no further.
    /// </summary>
    public bool MayShare(Kiln kiln, MenuFiring firing, Ware one, Ware other)
    {
        var key = Key(firing);
        if (one.Coats == other.Coats || (!touched.Contains((key, one.Coats)) && !touched.Contains((key, other.Coats)))) return true;
        var pair = string.CompareOrdinal(one.Coats, other.Coats) < 0 ? (key, one.Coats, other.Coats) : (key, other.Coats, one.Coats);
        if (together.TryGetValue(pair, out var may)) return may;
        Patience.Check();
        var answer = Check(kiln, firing, [one.Named(0), other.Named(1)]);
        may = !answer.ReasonTable.Any(r => r.Reason.Code == ReasonCode.FumesOnNeighbours);
        return together[pair] = may;
    }

    private LoadAnswer Check(Kiln kiln, MenuFiring firing, IReadOnlyList<PieceRequest> pieces) =>
        reference.Loads.Check(Load(kiln, firing, pieces), "verdicts");

    // Only this firing is offered, so that nothing is spent on suggestions.
    private static LoadRequest Load(Kiln kiln, MenuFiring firing, IReadOnlyList<PieceRequest> pieces) => new(
        kiln, new FiringRequest(firing.FiringKind, firing.Cone, firing.Atmosphere), pieces,
        Offered: [new OfferedFiringRequest(firing.FiringKind, firing.Cone, firing.Atmosphere)]);
}
