using ConeService.Firing.Room;
using ConeService.Planning.Model;

namespace ConeService.Planning.FirstPlan;

/// <summary>
/// The shelves of pieces waiting as firings are loaded one after another, by loading: what is there, what goes in, what comes out when.
/// Pieces of pinned firings are kept for them. Not for several threads.
/// </summary>
internal sealed class Loading
{
    private readonly Problem problem;
    private readonly List<(int Time, int Count)>[] arrivals;
    private readonly int[] taken;
    private readonly int[] reserved;
    private readonly int[][][] takes;
    private readonly int[] tails;
    private readonly Packing[] packings;
    private readonly long[] keys;
    private readonly int[] order;

    /// <summary>Begins with what a problem has.</summary>
    public Loading(Problem problem)
    {
        this.problem = problem;
        var count = problem.Stages.Count;
        (arrivals, taken, reserved) = (new List<(int, int)>[count], new int[count], new int[count]);
        for (var i = 0; i < count; i++) arrivals[i] = [];
        (keys, order) = (new long[count], new int[count]);
        packings = [.. problem.Kilns.Select(k => new Packing(k.Room))];
        takes = [.. problem.Kilns.Select(k => k.Types
            .Select(t => Enumerable.Range(0, count).Where(s => t.Takes[s]).ToArray()).ToArray())];
        tails = Tails(problem);
        Reset();
    }

    /// <summary>Latest unloading of a stage after which its piece may still be in time; the most there is without a date.</summary>
    public int LatestEnd(int stage) => problem.ItemOf(stage) is { DueBinds: true, Due: { } due } ? due - tails[stage] : int.MaxValue;

    /// <summary>The stages that a type takes.</summary>
    public IReadOnlyList<int> TakenBy(int kiln, int type) => takes[kiln][type];

    /// <summary>Begins anew.</summary>
    public void Reset()
    {
        foreach (var list in arrivals) list.Clear();
        Array.Clear(taken);
        Array.Clear(reserved);
        foreach (var pin in problem.Pins)
        {
            foreach (var (stage, count) in pin.Contents) reserved[stage] += count;
        }
    }

    /// <summary>How many of a stage could be loaded at a moment.</summary>
    public int Waiting(int stage, int load)
    {
        var s = problem.Stages[stage];
        var item = problem.Items[s.Item];
        var there = 0;
        if (s.Number == 0) there = item.Ready <= load ? item.Count : 0;
        else
        {
            foreach (var (time, count) in arrivals[stage])
            {
                if (time <= load) there += count;
            }
        }

        return there - taken[stage] - reserved[stage];
    }

    /// <summary>Puts into a firing what is waiting, in the order of a rule; nothing is taken yet.</summary>
    /// <param name="kiln">The kiln.</param>
    /// <param name="start">Place of its start.</param>
    /// <param name="type">What it is.</param>
    /// <param name="held">What stands in it already; null: nothing.</param>
    /// <param name="rank">Smaller goes in first; negative: not at all.</param>
    public Loaded Fill(int kiln, int start, int type, IReadOnlyList<StageCount>? held, Func<int, long> rank)
    {
        var model = problem.Kilns[kiln];
        var (load, packing) = (model.LoadAt(start), packings[kiln]);
        packing.Clear();
        var contents = new List<StageCount>(held ?? []);
        foreach (var (stage, number) in contents) packing.Add(model.Slots[stage], number);
        var candidates = 0;
        foreach (var stage in takes[kiln][type])
        {
            if (Waiting(stage, load) <= 0 || rank(stage) is var key && key < 0) continue;
            (keys[candidates], order[candidates]) = (key, stage);
            candidates++;
        }

        Array.Sort(keys, order, 0, candidates);
        var dated = false;
        for (var i = 0; i < candidates; i++)
        {
            var stage = order[i];
            // What is held is waiting too, until the firing is taken.
            var at = held is null ? -1 : contents.FindIndex(c => c.Stage == stage);
            var most = packing.MostOf(model.Slots[stage], Waiting(stage, load) - (at < 0 ? 0 : contents[at].Count));
            if (most <= 0) continue;
            packing.Add(model.Slots[stage], most);
            dated |= problem.ItemOf(stage).DueBinds;
            if (at < 0) contents.Add(new(stage, most));
            else contents[at] = new(stage, contents[at].Count + most);
        }

        return new(contents, packing.Fill, dated);
    }

    /// <summary>Takes what a firing holds.</summary>
    public void Take(DraftFiring firing)
    {
        var end = problem.Kilns[firing.Kiln].EndOf(firing.Start, firing.Type);
        foreach (var (stage, count) in firing.Contents)
        {
            taken[stage] += count;
            var item = problem.ItemOf(stage);
            if (!problem.Stages[stage].IsLast) arrivals[stage + 1].Add((end + item.Handling, count));
        }
    }

    /// <summary>Gives back what was kept for a pinned firing, just before it is loaded.</summary>
    public void Release(Pin pin)
    {
        foreach (var (stage, count) in pin.Contents) reserved[stage] -= count;
    }

    // What must still pass after a stage: handling, loading and firing of each later one.
    private static int[] Tails(Problem problem)
    {
        var tails = new int[problem.Stages.Count];
        for (var s = problem.Stages.Count - 1; s >= 0; s--)
        {
            if (problem.Stages[s].IsLast) continue;
            var shortest = int.MaxValue;
            foreach (var kiln in problem.Kilns)
            {
                foreach (var type in kiln.Types.Where(t => t.Takes[s + 1]))
                {
                    for (var i = 0; i < kiln.Starts.Count; i++)
                    {
                        if (kiln.Ends[type.Programme][i] is var end && end >= 0) shortest = Math.Min(shortest, end - kiln.LoadAt(i));
                    }
                }
            }

            tails[s] = shortest == int.MaxValue ? 0 : tails[s + 1] + problem.ItemOf(s).Handling + shortest;
        }

        return tails;
    }
}

/// <summary>What goes into a firing.</summary>
/// <param name="Contents">The pieces.</param>
/// <param name="Fill">How full it is, in 1/10,000.</param>
/// <param name="Dated">True where one of them has a date.</param>
internal sealed record Loaded(IReadOnlyList<StageCount> Contents, int Fill, bool Dated);
