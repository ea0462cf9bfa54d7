using ConeService.Planning.Model;

namespace ConeService.Planning.Tests.Oracle;

/// <summary>
/// The best plan of a small question, by trying every calendar and every course of every single piece through it. Shares nothing with
/// search, solver, judge or score: it reads the numbers of the problem and counts for itself. A piece in a pinned firing must be in its
/// first.
/// </summary>
internal sealed class BruteForce
{
    private readonly Problem problem;
    private readonly List<Run> pins;
    private readonly List<int> pieces = [];
    private List<Run> runs = [];
    private List<List<Course>> courses = [];
    private int[] chosen = [];
    private Worth? best;

    private BruteForce(Problem problem)
    {
        this.problem = problem;
        pins = [.. problem.Pins.Select(p => RunOf(p.Kiln, p.Start, p.Type, p))];
        foreach (var item in problem.Items)
        {
            for (var n = 0; n < item.Count; n++) pieces.Add(item.Index);
        }
    }

    /// <summary>What the best plan is worth.</summary>
    public static Worth Best(Problem problem)
    {
        var force = new BruteForce(problem);
        force.Calendars(0, 0, []);
        return force.best ?? throw new InvalidOperationException("No plan at all keeps the pins.");
    }

    private Run RunOf(int kiln, int start, int type, Pin? pin)
    {
        var model = problem.Kilns[kiln];
        var of = model.Types[type];
        return new(kiln, type, model.Starts[start] - model.Loading, model.Ends[of.Programme][start], of.Cost, pin);
    }

    private void Calendars(int kiln, int start, List<Run> made)
    {
        if (kiln == problem.Kilns.Count)
        {
            if (made.Count <= problem.Stages.Sum(s => problem.Items[s.Item].Count)) Fill([.. made, .. pins]);
            return;
        }

        if (start == problem.Kilns[kiln].Starts.Count)
        {
            Calendars(kiln + 1, 0, made);
            return;
        }

        Calendars(kiln, start + 1, made);
        for (var type = 0; type < problem.Kilns[kiln].Types.Count; type++)
        {
            var run = RunOf(kiln, start, type, null);
            if (run.End < 0 || made.Concat(pins).Any(o => o.Kiln == kiln && o.Load < run.End && run.Load < o.End)) continue;
            made.Add(run);
            Calendars(kiln, start + 1, made);
            made.RemoveAt(made.Count - 1);
        }
    }

    private void Fill(List<Run> calendar)
    {
        runs = calendar;
        courses = [.. problem.Items.Select(Courses)];
        chosen = new int[pieces.Count];
        Place(0, new Worth(0, 0, runs.Sum(r => r.Cost), 0));
    }

    // Every way of one piece through the calendar, none of it included; what is worth most first.
    private List<Course> Courses(Item item)
    {
        var found = new List<Course>();
        Go([]);
        found.Sort((a, b) => a.Worth.CompareTo(b.Worth));
        return found;

        void Go(List<int> way)
        {
            found.Add(new([.. way], WorthOf(item, way)));
            if (way.Count == item.StageCount) return;
            var ready = way.Count == 0 ? item.Ready : runs[way[^1]].End + item.Handling;
            var stage = item.FirstStage + way.Count;
            for (var r = 0; r < runs.Count; r++)
            {
                var run = runs[r];
                var may = run.Pin is null
                    ? problem.Kilns[run.Kiln].Types[run.Type].Takes[stage]
                    : run.Pin.Contents.Any(c => c.Stage == stage)
                        || (!run.Pin.Closed && problem.Kilns[run.Kiln].Types[run.Type].Takes[stage]);
                if (!may || run.Load < ready) continue;
                way.Add(r);
                Go(way);
                way.RemoveAt(way.Count - 1);
            }
        }
    }

    private Worth WorthOf(Item item, List<int> way)
    {
        var left = item.StageCount - way.Count;
        var since = Math.Max(0, item.Ready);
        if (left > 0) return new(item.UndoneLateness, left, 0, Math.Max(0, problem.Horizon - since) / 60);
        var end = runs[way[^1]].End;
        long late = 0;
        if (item.DueBinds && item.Due is { } due && end > due)
        {
            var days = (end - due) / 1440;
            if ((end - due) % 1440 > 0) days++;
            late = item.Priority * (1000L + days);
        }

        return new(late, 0, 0, Math.Max(0, end - since) / 60);
    }

    private void Place(int piece, Worth worth)
    {
        if (best is { } known && worth.CompareTo(known) >= 0) return;
        if (piece == pieces.Count)
        {
            if (Enumerable.Range(0, runs.Count).All(Fires)) best = worth;
            return;
        }

        var item = pieces[piece];
        // Of pieces alike the order does not matter.
        var from = piece > 0 && pieces[piece - 1] == item ? chosen[piece - 1] : 0;
        for (var c = from; c < courses[item].Count; c++)
        {
            chosen[piece] = c;
            var course = courses[item][c];
            if (course.Runs.All(r => Stands(r, piece + 1))) Place(piece + 1, worth.Plus(course.Worth));
        }
    }

    private List<int> Held(int run, int until)
    {
        var stages = new List<int>();
        for (var p = 0; p < until; p++)
        {
            var way = courses[pieces[p]][chosen[p]].Runs;
            for (var n = 0; n < way.Length; n++)
            {
                if (way[n] == run) stages.Add(problem.Items[pieces[p]].FirstStage + n);
            }
        }

        return stages;
    }

    // Layer by layer from the tallest down: each begun layer is as high as the tallest piece that begins it.
    private bool Stands(int run, int until)
    {
        var kiln = problem.Kilns[runs[run].Kiln];
        var slots = Held(run, until).Select(s => kiln.Slots[s]).OrderByDescending(s => s.Height).ToList();
        if (runs[run].Pin is not null && slots.Count <= runs[run].Pin!.Contents.Sum(c => c.Count)) return true;
        if (slots.Any(s => s.Share <= 0) || slots.Sum(s => (long)s.Volume) > 10_000_000) return false;
        var (area, height, layers) = (0L, 0L, 0L);
        foreach (var slot in slots)
        {
            area += slot.Share;
            while (layers * 10_000 < area)
            {
                layers++;
                height += slot.Height + kiln.Room.Shelf;
            }
        }

        return layers <= kiln.Room.Layers && height <= kiln.Room.Height;
    }

    private bool Fires(int run)
    {
        var held = Held(run, pieces.Count);
        var (of, kiln) = (runs[run], problem.Kilns[runs[run].Kiln]);
        if (of.Pin is { } pin)
        {
            return pin.Contents.All(c => held.Count(h => h == c.Stage) >= c.Count)
                && (!pin.Closed || held.Count == pin.Contents.Sum(c => c.Count));
        }

        if (held.Count == 0) return false;
        if (held.Exists(s => problem.Items[problem.Stages[s].Item].DueBinds)) return true;
        var byHeight = held.Sum(s => (long)kiln.Slots[s].Share * (kiln.Slots[s].Height + kiln.Room.Shelf)) / kiln.Room.Height;
        var byLayers = held.Sum(s => (long)kiln.Slots[s].Share) / kiln.Room.Layers;
        return byHeight >= problem.MinimumFill || byLayers >= problem.MinimumFill;
    }

    private sealed record Run(int Kiln, int Type, int Load, int End, long Cost, Pin? Pin);

    private sealed record Course(int[] Runs, Worth Worth);
}

/// <summary>What a plan is worth, first things first; less is better.</summary>
internal readonly record struct Worth(long Late, long Undone, long Cost, long Waiting) : IComparable<Worth>
{
    /// <summary>Of both together.</summary>
    public Worth Plus(Worth other) => new(Late + other.Late, Undone + other.Undone, Cost + other.Cost, Waiting + other.Waiting);

    /// <summary>Less than 0 where it is better.</summary>
    public int CompareTo(Worth other) => (Late, Undone, Cost, Waiting).CompareTo((other.Late, other.Undone, other.Cost, other.Waiting));
}
