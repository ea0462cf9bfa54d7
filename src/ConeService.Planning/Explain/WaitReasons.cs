using ConeService.Contract.Plans;
using ConeService.Firing;
using ConeService.Firing.Room;
using ConeService.Planning.Digest;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Model;

namespace ConeService.Planning.Explain;

/// <summary>Why pieces wait though they could be loaded.</summary>
internal sealed class WaitReasons(Digested digested, Draft plan)
{
    // So long after a firing left without it a piece is still told that it came too late for it.
    private const int Missed = 3 * Problem.Day;

    private readonly Problem problem = digested.Problem;
    private readonly Dictionary<(int, int, int), IReadOnlyList<WaitReason>> known = [];
    private readonly List<Booking> bookings = [.. plan.Firings.Select(f => new Booking(f.Kiln, f.Start, f.Type))];
    private readonly List<Packing> packings = [.. plan.Firings.Select(f => Packed(digested.Problem, f))];
    private readonly Dictionary<(int Firing, Slot Slot), bool> room = [];
    private readonly Dictionary<(int Kiln, int Start, int Type), bool> untaken = [];
    private readonly HashSet<(int Kiln, int Start)> shut = [.. digested.Problem.Pins.Where(p => p.Closed).Select(p => (p.Kiln, p.Start))];

    /// <summary>The reasons, each once, in the order in which <see cref="WaitReason"/> has them.</summary>
    /// <param name="stage">The firing waited for.</param>
    /// <param name="from">From when it could be loaded, min.</param>
    /// <param name="to">When it is loaded, min; the end of the horizon where it never is.</param>
    public IReadOnlyList<WaitReason> Of(int stage, int from, int to)
    {
        if (known.TryGetValue((stage, from, to), out var told)) return told;
        var found = new SortedSet<WaitReason>();
        Patience.Check();
        for (var i = 0; i < plan.Firings.Count; i++)
        {
            var firing = plan.Firings[i];
            var load = problem.Kilns[firing.Kiln].LoadAt(firing.Start);
            if (load < to && load >= from - Missed && Of(stage, i, load, from) is { } reason) found.Add(reason);
        }

        foreach (var kiln in problem.Kilns)
        {
            if (kiln.Slots[stage].Share == 0)
            {
                if (kiln.Types.Count > 0 && digested.Accepted[kiln.Index].Any(m => m[stage])) found.Add(WaitReason.TooBigForKiln);
                continue;
            }

            if (Untaken(kiln, stage, from, to) is { } reason) found.Add(reason);
        }

        return known[(stage, from, to)] = [.. found];
    }

    /// <summary>The one that binds a piece that is left undone.</summary>
    public WaitReason Binding(int stage, int from)
    {
        var all = Of(stage, from, problem.Horizon);
        WaitReason[] order =
        [
            WaitReason.AFiringMoreWouldCost, WaitReason.NoRoom, WaitReason.OtherCompany, WaitReason.AlreadyLoaded,
            WaitReason.KilnsTakenOrShut, WaitReason.NotReadyWhenLoaded, WaitReason.TooBigForKiln,
        ];
        return order.FirstOrDefault(all.Contains, WaitReason.KilnsTakenOrShut);
    }

    private WaitReason? Of(int stage, int place, int load, int from)
    {
        var firing = plan.Firings[place];
        var kiln = problem.Kilns[firing.Kiln];
        var type = kiln.Types[firing.Type];
        if (load < from) return type.Takes[stage] ? WaitReason.NotReadyWhenLoaded : null;
        if (!type.Takes[stage])
        {
            return digested.Accepted[firing.Kiln][type.Menu][stage] && kiln.Slots[stage].Share > 0 ? WaitReason.OtherCompany : null;
        }

        if (shut.Contains((firing.Kiln, firing.Start))) return WaitReason.AlreadyLoaded;
        // Pieces of one size ask the same of the same firing.
        var slot = kiln.Slots[stage];
        if (!room.TryGetValue((place, slot), out var there)) room[(place, slot)] = there = packings[place].MostOf(slot, 1) > 0;
        return there ? null : WaitReason.NoRoom;
    }

    private static Packing Packed(Problem problem, DraftFiring firing)
    {
        var kiln = problem.Kilns[firing.Kiln];
        var packing = new Packing(kiln.Room);
        foreach (var (held, count) in firing.Contents) packing.Add(kiln.Slots[held], count);
        return packing;
    }

    // A start that no firing of the plan stands in the way of, or none.
    private WaitReason? Untaken(KilnModel kiln, int stage, int from, int to)
    {
        WaitReason? found = null;
        for (var i = 0; i < kiln.Starts.Count; i++)
        {
            if (kiln.LoadAt(i) < from || kiln.LoadAt(i) >= to) continue;
            for (var t = 0; t < kiln.Types.Count; t++)
            {
                if (!kiln.Types[t].Takes[stage]) continue;
                found = WaitReason.KilnsTakenOrShut;
                if (IsUntaken(kiln, i, t)) return WaitReason.AFiringMoreWouldCost;
            }
        }

        return found;
    }

    // The same start is asked about for every piece that could have been in it.
    private bool IsUntaken(KilnModel kiln, int start, int type)
    {
        if (untaken.TryGetValue((kiln.Index, start, type), out var told)) return told;
        return untaken[(kiln.Index, start, type)] =
            kiln.EndOf(start, type) >= 0 && !FirstPlanner.Overlaps(problem, new(kiln.Index, start, type), bookings);
    }
}
