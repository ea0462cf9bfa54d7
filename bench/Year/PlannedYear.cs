using ConeService.Planning;
using ConeService.Planning.Model;

namespace ConeService.Bench.Year;

/// <summary>
/// The year of a studio that plans each Monday, and once more when a firing ended so late that the next can't be loaded as planned. What
/// runs stands; the former plan is announced. The plan sees what is on the shelves or in the kilns, nothing that is yet to come.
/// </summary>
internal sealed class PlannedYear(Studio studio, int horizonWeeks, int steps, int seed, int? marginDays, int fill = 7000)
{
    // A firing so full is never kept waiting.
    private const int FullEnough = 9000;

    private readonly List<Waiting> shelves = [];
    private readonly List<(int Kiln, int Foreseen, int Really, List<Waiting> Ware)> running = [];
    private readonly List<(int Kiln, int Menu)> fired = [];
    private readonly List<(Batch Batch, int Count, int At)> done = [];
    private List<Told> told = [];
    private int announced;
    private int undone;
    private int arrived;
    private int now;

    public async Task<Outcome> RunAsync()
    {
        var end = Studio.Weeks * Studio.Week;
        var batches = studio.Batches.OrderBy(b => b.Ready).ToList();
        var monday = 0;
        while (now < end)
        {
            Settle(batches);
            var plan = await PlanAsync();
            var next = monday <= now ? monday = ((now / Studio.Week) + 1) * Studio.Week : monday;
            var again = next;
            foreach (var firing in plan)
            {
                if (firing.Load >= next) break;
                now = firing.Load;
                Settle(batches);
                if (!Possible(firing)) break;
                if (marginDays is { } margin && firing.Fill < FullEnough && await CanWaitAsync(firing, margin))
                {
                    again = ((now / Studio.Day) + 1) * Studio.Day;
                    break;
                }

                Fire(firing);
                told.Remove(firing);
            }

            // Broken off where it was not possible: planned anew from there.
            now = again < next ? Math.Min(again, next) : plan.Exists(f => f.Load == now && told.Contains(f)) ? now + 1 : next;
        }

        foreach (var run in running) Out(run.Ware, run.Really);
        return Outcome.Of(studio, fired, done, announced, undone);
    }

    private void Settle(List<Batch> batches)
    {
        for (; arrived < batches.Count && batches[arrived].Ready <= now; arrived++)
            shelves.Add(new(batches[arrived], 0, batches[arrived].Ready, batches[arrived].Count));
        foreach (var run in running.Where(r => r.Really <= now).ToList())
        {
            Out(run.Ware, run.Really);
            running.Remove(run);
        }
    }

    private void Out(List<Waiting> ware, int at)
    {
        foreach (var w in ware)
        {
            if (w.Stage == 1) done.Add((w.Batch, w.Count, at));
            else shelves.Add(new(w.Batch, 1, at + Studio.Handling, w.Count));
        }
    }

    private bool Possible(Told firing) =>
        running.TrueForAll(r => r.Kiln != firing.Kiln) && firing.Ware.GroupBy(w => (w.Batch, w.Stage)).All(g =>
            shelves.Where(s => s.Batch == g.Key.Batch && s.Stage == g.Key.Stage && s.From <= now).Sum(s => s.Count) >= g.Sum(w => w.Count));

    private void Fire(Told firing)
    {
        foreach (var ware in firing.Ware)
        {
            var left = ware.Count;
            foreach (var at in shelves.Where(s => s.Batch == ware.Batch && s.Stage == ware.Stage && s.From <= now).OrderBy(s => s.From)
                .ToList())
            {
                var taken = Math.Min(left, at.Count);
                shelves.Remove(at);
                if (at.Count > taken) shelves.Add(at with { Count = at.Count - taken });
                left -= taken;
                if (left == 0) break;
            }
        }

        fired.Add((firing.Kiln, firing.Menu));
        running.Add((
            firing.Kiln, Studio.Foreseen(firing.Kiln, firing.Start, firing.Menu), studio.Really(firing.Kiln, firing.Start, firing.Menu),
                firing.Ware));
    }

    private async Task<List<Told>> PlanAsync()
    {
        var (problem, ware) = Ask(null);
        var begun = System.Diagnostics.Stopwatch.GetTimestamp();
        var plan = (await Planner.SearchAsync(problem, new(Seconds: 0, Steps: steps, Workers: 1, Seed: seed, Solver: false), begun)).Plan;
        var made = plan.Firings.Select(f => Read(problem, ware, f)).OrderBy(f => f.Load).ToList();
        // What was announced for the time to come and is no more.
        undone += told.Count(t => t.Load >= now && !made.Exists(m => m.Kiln == t.Kiln && m.Start == t.Start && m.Menu == t.Menu));
        var soon = made.Where(m => m.Load < now + (2 * Studio.Week)).ToList();
        announced += soon.Count(m => !told.Exists(t => m.Kiln == t.Kiln && m.Start == t.Start && m.Menu == t.Menu));
        told = soon;
        return made;
    }

    // Whether nobody comes nearer to a date than a margin, and nothing more is left undone, when this kiln starts nothing before tomorrow.
    private async Task<bool> CanWaitAsync(Told firing, int margin)
    {
        async Task<Score> Best((int Kiln, int Until)? not)
        {
            var (problem, _) = Ask(not, margin * Studio.Day);
            var begun = System.Diagnostics.Stopwatch.GetTimestamp();
            return (await Planner.SearchAsync(problem,
                new(Seconds: 0, Steps: Math.Max(50, steps / 4), Workers: 1, Seed: seed, Solver: false), begun)).Plan.Score;
        }

        var soon = await Best(null);
        var later = await Best((firing.Kiln, ((now / Studio.Day) + 1) * Studio.Day));
        return later.Late <= soon.Late && later.Undone <= soon.Undone;
    }

    private (Problem Problem, List<Waiting> Ware) Ask((int Kiln, int Until)? not, int margin = 0)
    {
        var ware = new List<Waiting>(shelves);
        var free = new int[Studio.Kilns];
        foreach (var run in running)
        {
            // Who is late already comes out at any moment.
            var expected = Math.Max(run.Foreseen, now + 60);
            free[run.Kiln] = expected;
            ware.AddRange(run.Ware.Where(w => w.Stage == 0).Select(w => new Waiting(w.Batch, 1, expected + Studio.Handling, w.Count)));
        }

        if (not is { } held) free[held.Kiln] = Math.Max(free[held.Kiln], held.Until);
        var problem = studio.Ask(now, horizonWeeks * Studio.Week, ware, free, Studio.Foreseen, margin, fill);
        var former = told.Where(t => t.Load >= now).Select(t => Announce(problem, ware, t)).OfType<Announced>().ToList();
        return (former.Count == 0 ? problem : new()
        {
            Horizon = problem.Horizon,
            Kilns = problem.Kilns,
            Items = problem.Items,
            Stages = problem.Stages,
            MinimumFill = problem.MinimumFill,
            Announced = former,
        }, ware);
    }

    private Announced? Announce(Problem problem, List<Waiting> ware, Told firing)
    {
        var start = problem.Kilns[firing.Kiln].Starts.ToList().IndexOf(firing.Start - now);
        if (start < 0) return null;
        var contents = new List<StageCount>();
        foreach (var w in firing.Ware)
        {
            var left = w.Count;
            foreach (var stage in problem.Stages)
            {
                var of = ware[stage.Item];
                if (left == 0 || of.Batch != w.Batch || of.Stage + stage.Number != w.Stage) continue;
                var taken = Math.Min(left, of.Count);
                if (contents.Exists(c => c.Stage == stage.Index)) continue;
                contents.Add(new(stage.Index, taken));
                left -= taken;
            }
        }

        return new(firing.Kiln, start, firing.Menu, contents);
    }

    private Told Read(Problem problem, List<Waiting> ware, DraftFiring firing)
    {
        var kiln = problem.Kilns[firing.Kiln];
        var packing = new ConeService.Firing.Room.Packing(kiln.Room);
        foreach (var (stage, count) in firing.Contents) packing.Add(kiln.Slots[stage], count);
        return new(
            firing.Kiln, now + kiln.LoadAt(firing.Start), now + kiln.Starts[firing.Start], kiln.Types[firing.Type].Menu, packing.Fill,
            [.. firing.Contents.Select(c => new Waiting(
                ware[problem.Stages[c.Stage].Item].Batch, ware[problem.Stages[c.Stage].Item].Stage + problem.Stages[c.Stage].Number, 0,
                    c.Count))]);
    }

    private sealed record Told(int Kiln, int Load, int Start, int Menu, int Fill, List<Waiting> Ware);
}
