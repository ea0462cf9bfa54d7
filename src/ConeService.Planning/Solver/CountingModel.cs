using System.Globalization;
using System.Text;
using ConeService.Firing.Room;
using ConeService.Planning.Bounds;
using ConeService.Planning.Model;
using ConeService.Planning.Search;
using Google.OrTools.Sat;

namespace ConeService.Planning.Solver;

/// <summary>Firings and pieces counted by type and span. Stages that go into the same firings and take the same room are one.</summary>
internal sealed class CountingModel
{
    private const string Branching = "search_branching:PSEUDO_COST_SEARCH";
    private readonly Problem problem;
    private readonly IReadOnlyList<Opening> openings;
    private readonly CpModel model = new();
    private readonly Sum late = new();
    private readonly Sum undone = new();
    private readonly Sum cost = new();
    private readonly List<int> edges;
    private readonly bool inTime;
    private readonly int[] alike;

    /// <summary>Builds it.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="openings">What may be fired.</param>
    /// <param name="spans">Into how many spans the starts are cut.</param>
    /// <param name="inTime">True: only plans without lateness are asked about.</param>
    public CountingModel(Problem problem, IReadOnlyList<Opening> openings, int spans, bool inTime)
    {
        (this.problem, this.inTime) = (problem, inTime);
        // Kilns alike in everything count as one that may fire several at once.
        var first = Twins.Firsts(problem);
        this.openings = openings = [.. openings.Where(o => first[o.Booking.Kiln] == o.Booking.Kiln)];
        alike = [.. problem.Kilns.Select(k => first.Count(f => f == k.Index))];
        var loads = openings.Select(o => o.Load).Order().ToList();
        edges = [.. Enumerable.Range(1, spans - 1).Select(i => loads[i * loads.Count / spans]).Distinct()];
        var groups = openings.GroupBy(o => new Group(o.Booking.Kiln, o.Booking.Type, SpanOf(o))).Select(g => (g.Key, Openings: g.ToList()))
            .ToList();
        var fired = groups.ConvertAll(g => model.NewIntVar(0, Disjoint(g.Openings) * alike[g.Key.Kiln], ""));
        for (var g = 0; g < groups.Count; g++) cost.Add(fired[g], groups[g].Openings[0].Cost);
        Calendars(groups.ConvertAll(g => g.Key), fired);
        var contents = groups.ConvertAll(_ => new List<(int Stage, IntVar Count)>());
        var sorts = Sorts(groups);
        foreach (var same in problem.Stages.GroupBy(s => sorts[s.Index])) Place(same.Key, [.. same], groups.ConvertAll(g => g.Key.Kiln),
            fired, contents);
        for (var g = 0; g < groups.Count; g++) Room(problem.Kilns[groups[g].Key.Kiln], fired[g], contents[g]);
    }

    /// <summary>What is least, level by level.</summary>
    public PlanBounds Bounds(Score score, PlanBounds known, SolverTime time, int seed)
    {
        var bounds = known;
        if (score.Late > bounds.Late && !inTime && Least(late, time.Share(0.25), time, seed) is { } least)
            bounds = bounds with { Late = Math.Max(bounds.Late, least) };
        model.Add(late.Expression <= score.Late);
        // Fewest undone are counted of plans as early as the best known; that is a bound of all only where none is earlier.
        if (score.Undone > bounds.Undone && score.Late <= bounds.Late && !time.IsOver
            && Least(undone, time.Share(0.4), time, seed) is { } fewest)
            bounds = bounds with { Undone = (int)Math.Max(bounds.Undone, fewest) };
        model.Add(undone.Expression <= score.Undone);
        return !time.IsOver && Least(cost, time.Share(1), time, seed) is { } cheapest ? bounds.WithCost(cheapest, score) : bounds;
    }

    private long? Least(Sum sum, SolverTime part, SolverTime whole, int seed)
    {
        if (sum.IsConstant) return sum.Constant;
        model.Minimize(sum.Expression);
        using var run = new SolverRun(model, part, seed, Branching);
        var before = part.Work;
        var status = run.Solve();
        if (!double.IsInfinity(before)) whole.Spend(before - part.Work);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible || (status == CpSolverStatus.Unknown && run.Bound > 0)
            ? (long)Math.Ceiling(run.Bound - 1e-6)
            : null;
    }

    private int SpanOf(Opening opening) => edges.Count(e => e <= opening.Load);

    // What decides where each stage may be and what it takes there: equal for stages alike.
    private string[] Sorts(List<(Group Key, List<Opening> Openings)> groups)
    {
        var sorts = problem.Stages.Select(s => new StringBuilder(string.Create(
            CultureInfo.InvariantCulture,
            $"{problem.Items[s.Item].DueBinds} {(s.IsLast ? Weight(problem.Items[s.Item].UndoneLateness) : 0)}"))).ToList();
        for (var g = 0; g < groups.Count; g++)
        {
            var least = new Dictionary<int, long>();
            foreach (var opening in groups[g].Openings)
            {
                foreach (var (stage, _) in opening.Most)
                {
                    var lateness = problem.Stages[stage].IsLast ? Weight(Problem.Lateness(problem.ItemOf(stage), opening.End)) : 0;
                    if (inTime && lateness > 0) continue;
                    least[stage] = least.TryGetValue(stage, out var known) ? Math.Min(known, lateness) : lateness;
                }
            }

            foreach (var (stage, lateness) in least)
            {
                var slot = problem.Kilns[groups[g].Key.Kiln].Slots[stage];
                sorts[stage].Append(CultureInfo.InvariantCulture, $";{g} {lateness} {slot.Height} {slot.Share} {slot.Volume}");
            }
        }

        return [.. sorts.Select(s => s.ToString())];
    }

    private long Weight(long lateness) => inTime ? Math.Min(1, lateness) : lateness;

    private void Place(
        string sort, List<Stage> stages, List<int> kilns, List<IntVar> fired, List<List<(int Stage, IntVar Count)>> contents)
    {
        var first = problem.Items[stages[0].Item];
        var all = stages.Sum(s => problem.Items[s.Item].Count);
        undone.Add(all);
        var weight = stages[0].IsLast ? Weight(first.UndoneLateness) : 0;
        late.Add(all * weight);
        var placed = new Sum();
        foreach (var place in sort.Split(';').Skip(1).Select(p => p.Split(' ')))
        {
            var group = int.Parse(place[0], CultureInfo.InvariantCulture);
            var x = model.NewIntVar(0, all, "");
            var kiln = problem.Kilns[kilns[group]];
            model.Add(x <= new Packing(kiln.Room).MostOf(kiln.Slots[stages[0].Index], all) * (LinearExpr)fired[group]);
            contents[group].Add((stages[0].Index, x));
            placed.Add(x);
            undone.Add(x, -1);
            late.Add(x, long.Parse(place[1], CultureInfo.InvariantCulture) - weight);
        }

        if (!placed.IsConstant) model.Add(placed.Expression <= all);
    }

    // No more in some spans than can be fired one after another.
    private void Calendars(List<Group> groups, List<IntVar> fired)
    {
        foreach (var kiln in openings.GroupBy(o => o.Booking.Kiln))
        {
            for (var from = 0; from <= edges.Count; from++)
            {
                for (var to = from; to <= edges.Count; to++)
                {
                    var sum = new Sum();
                    for (var g = 0; g < groups.Count; g++)
                    {
                        if (groups[g].Kiln == kiln.Key && groups[g].Span >= from && groups[g].Span <= to) sum.Add(fired[g]);
                    }

                    if (!sum.IsConstant) model.Add(
                        sum.Expression <= Disjoint(kiln.Where(o => SpanOf(o) >= from && SpanOf(o) <= to)) * alike[kiln.Key]);
                }
            }
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

    private void Room(KilnModel kiln, IntVar fired, List<(int Stage, IntVar Count)> contents)
    {
        var (fill, volume) = (new Sum(), new Sum());
        fill.Add(fired, -problem.MinimumFill);
        volume.Add(fired, -10_000_000);
        foreach (var (stage, x) in contents)
        {
            var slot = kiln.Slots[stage];
            volume.Add(x, slot.Volume);
            // A date lets a kiln be as empty as it is; else at least as full as needed by what counts more.
            var byHeight = (((long)slot.Share * (slot.Height + kiln.Room.Shelf)) + kiln.Room.Height - 1) / kiln.Room.Height;
            var byLayers = (slot.Share + kiln.Room.Layers - 1) / kiln.Room.Layers;
            fill.Add(x, problem.ItemOf(stage).DueBinds ? problem.MinimumFill : Math.Max(byHeight, byLayers));
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
            foreach (var (stage, count) in contents.Where(c => kiln.Slots[c.Stage].Height >= height)) shares.Add(count,
                kiln.Slots[stage].Share);
            shares.Add(n, -Problem.Whole);
            model.Add(shares.Expression <= 0);
            layers.Add(n);
        }

        Stand(h => h + room.Shelf, room.Height);
        // Whole layers only: of what is higher than one in m + 1 of the room there are m at most, and so for mixtures.
        for (var m = 1; m <= 8; m++)
        {
            var parts = m + 1;
            Stand(h => ((((h + room.Shelf) * parts) + room.Height - 1) / room.Height) - 1, m);
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

    private readonly record struct Group(int Kiln, int Type, int Span);
}
