using ConeService.Firing;
using ConeService.Firing.Room;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Model;

namespace ConeService.Planning.Search;

/// <summary>A firing that a kiln could run, and what could be in it.</summary>
/// <param name="Booking">Kiln, start and type.</param>
/// <param name="Load">When it is loaded, min.</param>
/// <param name="End">When it is unloaded, min.</param>
/// <param name="Cost">What it costs, in 1/100.</param>
/// <param name="Most">What it could hold at most, each stage by itself.</param>
internal sealed record Opening(Booking Booking, int Load, int End, long Cost, IReadOnlyList<StageCount> Most);

/// <summary>All firings that are worth looking at: none that another is as good as in everything.</summary>
internal static class Openings
{
    // Starts, types and stages multiplied, up to which openings are listed: half a year without staffed hours, twenty kilns and 5,000
    // pieces had 100 million of them, and took gigabytes.
    private const long MostListed = 10_000_000;

    /// <summary>Whether so few are to be looked at that all are listed.</summary>
    public static bool AreFew(Problem problem) =>
        problem.Kilns.Sum(k => (long)k.Starts.Count * k.Types.Count) * problem.Stages.Count <= MostListed;

    /// <summary>Lists them.</summary>
    /// <param name="problem">The problem.</param>
    public static IReadOnlyList<Opening> Of(Problem problem)
    {
        var earliest = Earliest(problem);
        var most = problem.Kilns.Select(k => Most(problem, k)).ToList();
        var told = problem.Announced.Select(a => (a.Kiln, a.Start, a.Menu)).ToHashSet();
        var openings = new List<Opening>();
        foreach (var kiln in problem.Kilns)
        {
            var types = Enumerable.Range(0, kiln.Types.Count).Where(t => !IsBettered(kiln, t)).ToList();
            for (var i = 0; i < kiln.Starts.Count; i++)
            {
                Patience.Check();
                foreach (var t in types)
                {
                    var (load, end) = (kiln.LoadAt(i), kiln.EndOf(i, t));
                    if (end < 0) continue;
                    // A later start that is unloaded no later takes the kiln for less and may hold more.
                    if (!told.Contains((kiln.Index, i, kiln.Types[t].Menu)) && HasLater(kiln, i, t, end)) continue;
                    if (FirstPlanner.Overlaps(problem, new(kiln.Index, i, t), [])) continue;
                    var held = new List<StageCount>();
                    for (var s = 0; s < problem.Stages.Count; s++)
                    {
                        if (kiln.Types[t].Takes[s] && most[kiln.Index][s] > 0 && earliest[s] <= load) held.Add(new(s, most[kiln.Index][s]));
                    }

                    if (held.Count > 0 && (problem.Pins.Count > 0 || CanBeFull(problem, kiln, held))) openings.Add(
                        new(new(kiln.Index, i, t), load, end, kiln.Types[t].Cost, held));
                }
            }
        }

        return openings;
    }

    // A date lets it be as empty as it is; else all that there is must make it full enough.
    private static bool CanBeFull(Problem problem, KilnModel kiln, List<StageCount> held)
    {
        if (held.Exists(h => problem.ItemOf(h.Stage).DueBinds)) return true;
        long heights = 0, shares = 0;
        foreach (var (stage, _) in held)
        {
            var share = (long)kiln.Slots[stage].Share * problem.ItemOf(stage).Count;
            shares += share;
            heights += share * (kiln.Slots[stage].Height + kiln.Room.Shelf);
        }

        return Math.Max(heights / kiln.Room.Height, shares / kiln.Room.Layers) >= problem.MinimumFill;
    }

    /// <summary>A plan with every firing moved to an opening that is as good in everything.</summary>
    public static Draft Normal(Problem problem, IReadOnlyList<Opening> openings, Draft plan)
    {
        var all = openings.Select(o => o.Booking).ToHashSet();
        var firings = new List<DraftFiring>();
        foreach (var firing in plan.Firings)
        {
            var kiln = problem.Kilns[firing.Kiln];
            if (firing.IsPinned || all.Contains(new(firing.Kiln, firing.Start, firing.Type)))
            {
                firings.Add(firing);
                continue;
            }

            var (load, end) = (kiln.LoadAt(firing.Start), kiln.EndOf(firing.Start, firing.Type));
            var better = openings.FirstOrDefault(o => o.Booking.Kiln == firing.Kiln && o.Load >= load && o.End <= end
                && kiln.Types[o.Booking.Type].Menu == kiln.Types[firing.Type].Menu && o.Cost <= kiln.Types[firing.Type].Cost
                && firing.Contents.All(c => kiln.Types[o.Booking.Type].Takes[c.Stage]));
            firings.Add(better is null ? firing : firing with { Start = better.Booking.Start, Type = better.Booking.Type });
        }

        return Draft.Of(problem, firings);
    }

    private static bool HasLater(KilnModel kiln, int start, int type, int end)
    {
        for (var later = start + 1; later < kiln.Starts.Count && kiln.LoadAt(later) < end; later++)
        {
            if (kiln.EndOf(later, type) is var at && at >= 0 && at <= end) return true;
        }

        return false;
    }

    // Another type of the same entry that takes as much, is done no later and costs no more; of two alike the first stays.
    private static bool IsBettered(KilnModel kiln, int type)
    {
        var one = kiln.Types[type];
        for (var t = 0; t < kiln.Types.Count; t++)
        {
            var other = kiln.Types[t];
            if (t == type || other.Menu != one.Menu || other.Cost > one.Cost || !EndsNoLater(kiln, t, type)) continue;
            var (wider, alike) = (true, true);
            for (var s = 0; s < one.Takes.Length; s++)
            {
                wider &= !one.Takes[s] || other.Takes[s];
                alike &= one.Takes[s] == other.Takes[s];
            }

            if (wider && (!alike || other.Cost < one.Cost || t < type || !EndsNoLater(kiln, type, t))) return true;
        }

        return false;
    }

    // Wherever the other can be started, and no later there.
    private static bool EndsNoLater(KilnModel kiln, int type, int other)
    {
        if (kiln.Types[type].Programme == kiln.Types[other].Programme) return true;
        for (var i = 0; i < kiln.Starts.Count; i++)
        {
            var (end, at) = (kiln.EndOf(i, type), kiln.EndOf(i, other));
            if (at >= 0 && (end < 0 || end > at)) return false;
        }

        return true;
    }

    private static int[] Most(Problem problem, KilnModel kiln)
    {
        var packing = new Packing(kiln.Room);
        return [.. problem.Stages.Select(s => packing.MostOf(kiln.Slots[s.Index], problem.Items[s.Item].Count))];
    }

    // When each stage can be loaded at the earliest, its piece alone in the studio.
    private static int[] Earliest(Problem problem)
    {
        var earliest = new int[problem.Stages.Count];
        foreach (var item in problem.Items)
        {
            var ready = item.Ready;
            for (var n = 0; n < item.StageCount; n++)
            {
                var stage = item.FirstStage + n;
                earliest[stage] = ready;
                var end = problem.Pins.Where(p => p.Contents.Any(c => c.Stage == stage))
                    .Select(p => problem.Kilns[p.Kiln].EndOf(p.Start, p.Type)).DefaultIfEmpty(int.MaxValue).Min();
                foreach (var kiln in problem.Kilns)
                {
                    for (var t = 0; t < kiln.Types.Count; t++)
                    {
                        if (!kiln.Types[t].Takes[stage]) continue;
                        for (var i = 0; i < kiln.Starts.Count; i++)
                        {
                            if (kiln.LoadAt(i) >= ready && kiln.EndOf(i, t) is var at && at >= 0) end = Math.Min(end, at);
                        }
                    }
                }

                ready = end == int.MaxValue ? int.MaxValue : end + item.Handling;
            }
        }

        return earliest;
    }
}
