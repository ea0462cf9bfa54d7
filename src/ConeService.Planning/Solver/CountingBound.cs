using ConeService.Planning.Bounds;
using ConeService.Planning.Model;
using Google.OrTools.Sat;

namespace ConeService.Planning.Solver;

/// <summary>
/// What no plan betters, by counting: how many firings of each type a kiln runs in each span of its starts, and how many pieces are in them
/// together. Chains are left out, but for the earliest and the latest that each firing of a piece can be; the room is that of all firings
/// of a type and span in one. Each of these lets more through than a plan may do, so what is least here is least for plans.
/// </summary>
internal sealed class CountingBound(Problem problem, IReadOnlyList<Opening> openings, int seed)
{
    private const int Spans = 6;
    private readonly CpModel model = new();
    private readonly Sum late = new();
    private readonly Sum undone = new();
    private readonly Sum cost = new();

    /// <summary>The bounds.</summary>
    /// <param name="score">The best plan known: the cost found is that of plans no later and with no more undone.</param>
    /// <param name="known">What is known already.</param>
    /// <param name="time">What may be spent.</param>
    public PlanBounds Of(Score score, PlanBounds known, SolverTime time)
    {
        // Pinned firings may hold what nothing else would; of them nothing is counted.
        if (problem.Pins.Count > 0 || openings.Count == 0) return known;
        Build();
        var bounds = known;
        if (score.Late > bounds.Late)
        {
            if (Least(late, time.Share(0.25), time) is not { } least) return bounds;
            bounds = bounds with { Late = Math.Max(bounds.Late, least) };
        }

        model.Add(late.Expression <= score.Late);
        // Fewest undone are counted of plans as early as the best known; that is a bound of all only where none is earlier.
        if (score.Undone > bounds.Undone && score.Late <= bounds.Late && !time.IsOver && Least(undone, time.Share(0.3), time) is { } fewest)
            bounds = bounds with { Undone = (int)Math.Max(bounds.Undone, fewest) };
        model.Add(undone.Expression <= score.Undone);
        return !time.IsOver && Least(cost, time.Share(1), time) is { } cheapest ? bounds.WithCost(cheapest, score) : bounds;
    }

    private long? Least(Sum sum, SolverTime part, SolverTime whole)
    {
        if (sum.IsConstant) return sum.Constant;
        model.Minimize(sum.Expression);
        using var run = new SolverRun(model, part, seed);
        var before = part.Work;
        var status = run.Solve();
        if (!double.IsInfinity(before)) whole.Spend(before - part.Work);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible || (status == CpSolverStatus.Unknown && run.Bound > 0)
            ? (long)Math.Ceiling(run.Bound - 1e-6)
            : null;
    }

    private void Build()
    {
        var loads = openings.Select(o => o.Load).Order().ToList();
        var edges = Enumerable.Range(1, Spans - 1).Select(i => loads[i * loads.Count / Spans]).Distinct().ToList();
        int SpanOf(int load) => edges.Count(e => e <= load);
        var placed = problem.Stages.Select(_ => new Sum()).ToList();
        foreach (var stage in problem.Stages)
        {
            var item = problem.Items[stage.Item];
            undone.Add(item.Count);
            if (stage.IsLast) late.Add(item.Count * item.UndoneLateness);
        }

        foreach (var kiln in openings.GroupBy(o => o.Booking.Kiln))
        {
            var counts = new Dictionary<int, Sum>();
            foreach (var group in kiln.GroupBy(o => (o.Booking.Type, Span: SpanOf(o.Load))))
            {
                var fired = model.NewIntVar(0, Disjoint(group), "");
                if (!counts.TryGetValue(group.Key.Span, out var count)) counts[group.Key.Span] = count = new();
                count.Add(fired);
                cost.Add(fired, group.First().Cost);
                Fill(problem.Kilns[kiln.Key], fired, [.. group], placed);
            }

            for (var from = 0; from < Spans; from++)
            {
                for (var to = from; to < Spans; to++)
                {
                    var sum = new Sum();
                    foreach (var span in counts.Keys.Where(s => s >= from && s <= to)) sum.Add(counts[span]);
                    if (!sum.IsConstant) model.Add(sum.Expression <= Disjoint(kiln.Where(o => SpanOf(o.Load) >= from && SpanOf(o.Load) <= to)));
                }
            }
        }

        foreach (var stage in problem.Stages)
        {
            if (!placed[stage.Index].IsConstant) model.Add(placed[stage.Index].Expression <= problem.ItemOf(stage.Index).Count);
            // No more of a stage than of the one before.
            if (stage.Number == 0) continue;
            var more = new Sum();
            more.Add(placed[stage.Index]);
            more.Add(placed[stage.Index - 1], -1);
            if (!more.IsConstant) model.Add(more.Expression <= 0);
        }
    }

    // The most firings one after another.
    private static int Disjoint(IEnumerable<Opening> some)
    {
        var (count, free) = (0, int.MinValue);
        foreach (var opening in some.OrderBy(o => o.End))
        {
            if (opening.Load < free) continue;
            count++;
            free = opening.End;
        }

        return count;
    }

    private void Fill(KilnModel kiln, IntVar fired, List<Opening> group, List<Sum> placed)
    {
        var contents = new List<(int Stage, IntVar Count)>();
        var (fill, volume) = (new Sum(), new Sum());
        fill.Add(fired, -problem.MinimumFill);
        volume.Add(fired, -10_000_000);
        foreach (var stage in group.SelectMany(o => o.Most.Select(m => m.Stage)).Distinct().Order())
        {
            var (item, slot) = (problem.ItemOf(stage), kiln.Slots[stage]);
            var holding = group.Where(o => o.Most.Any(m => m.Stage == stage)).ToList();
            var each = holding[0].Most.First(m => m.Stage == stage).Count;
            var x = model.NewIntVar(0, item.Count, "");
            contents.Add((stage, x));
            placed[stage].Add(x);
            undone.Add(x, -1);
            if (problem.Stages[stage].IsLast) late.Add(x, Problem.Lateness(item, holding.Min(o => o.End)) - item.UndoneLateness);
            model.Add(x <= each * (LinearExpr)fired);
            volume.Add(x, slot.Volume);
            // A date lets a kiln be as empty as it is; else at least as full as needed by what counts more.
            var byHeight = (((long)slot.Share * (slot.Height + kiln.Room.Shelf)) + kiln.Room.Height - 1) / kiln.Room.Height;
            var byLayers = (slot.Share + kiln.Room.Layers - 1) / kiln.Room.Layers;
            fill.Add(x, item.DueBinds ? problem.MinimumFill : Math.Max(byHeight, byLayers));
        }

        model.Add(volume.Expression <= 0);
        model.Add(fill.Expression >= 0);
        Layers(kiln, fired, contents);
    }

    private void Layers(KilnModel kiln, IntVar fired, List<(int Stage, IntVar Count)> contents)
    {
        var room = kiln.Room;
        var heights = contents.Select(c => kiln.Slots[c.Stage].Height).Distinct().OrderDescending().ToList();
        var layers = new List<IntVar>();
        foreach (var height in heights)
        {
            var most = Math.Min(room.Layers, room.Height / (height + room.Shelf));
            var n = model.NewIntVar(0, 100_000, "");
            model.Add(n <= most * (LinearExpr)fired);
            if (layers.Count > 0) model.Add(n >= layers[^1]);
            var shares = new Sum();
            foreach (var (stage, count) in contents.Where(c => kiln.Slots[c.Stage].Height >= height)) shares.Add(count, kiln.Slots[stage].Share);
            shares.Add(n, -Problem.Whole);
            model.Add(shares.Expression <= 0);
            layers.Add(n);
        }

        Stand(h => h + room.Shelf, room.Height);
        // Whole layers only: of what is higher than one in m + 1 of the room there are m at most, and so for mixtures.
        for (var m = 1; m <= 8; m++)
        {
            var parts = m + 1;
            Stand(h => (((h + room.Shelf) * parts) + room.Height - 1) / room.Height - 1, m);
        }

        void Stand(Func<int, int> weight, int most)
        {
            var used = new Sum();
            for (var j = 0; j < heights.Count; j++)
            {
                used.Add(layers[j], weight(heights[j]));
                if (j > 0) used.Add(layers[j - 1], -weight(heights[j]));
            }

            used.Add(fired, -most);
            model.Add(used.Expression <= 0);
        }
    }
}
