using ConeService.Contract.Plans;
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

    /// <summary>The reasons, each once, in the order in which <see cref="WaitReason"/> has them.</summary>
    /// <param name="stage">The firing waited for.</param>
    /// <param name="from">From when it could be loaded, min.</param>
    /// <param name="to">When it is loaded, min; the end of the horizon where it never is.</param>
    public IReadOnlyList<WaitReason> Of(int stage, int from, int to)
    {
        if (known.TryGetValue((stage, from, to), out var told)) return told;
        var found = new SortedSet<WaitReason>();
        foreach (var firing in plan.Firings)
        {
            var load = problem.Kilns[firing.Kiln].LoadAt(firing.Start);
            if (load < to && load >= from - Missed && Of(stage, firing, load, from) is { } reason) found.Add(reason);
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

    private WaitReason? Of(int stage, DraftFiring firing, int load, int from)
    {
        var kiln = problem.Kilns[firing.Kiln];
        var type = kiln.Types[firing.Type];
        if (load < from) return type.Takes[stage] ? WaitReason.NotReadyWhenLoaded : null;
        if (!type.Takes[stage])
        {
            return digested.Accepted[firing.Kiln][type.Menu][stage] && kiln.Slots[stage].Share > 0 ? WaitReason.OtherCompany : null;
        }

        if (problem.Pins.Any(p => p.Closed && p.Kiln == firing.Kiln && p.Start == firing.Start)) return WaitReason.AlreadyLoaded;
        var packing = new Packing(kiln.Room);
        foreach (var (held, count) in firing.Contents) packing.Add(kiln.Slots[held], count);
        return packing.MostOf(kiln.Slots[stage], 1) == 0 ? WaitReason.NoRoom : null;
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
                if (kiln.EndOf(i, t) >= 0 && !FirstPlanner.Overlaps(problem, new(kiln.Index, i, t), bookings))
                    return WaitReason.AFiringMoreWouldCost;
            }
        }

        return found;
    }
}
