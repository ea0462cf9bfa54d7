using ConeService.Firing.Room;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Model;
using ConeService.Planning.Search;
using Google.OrTools.Sat;

namespace ConeService.Planning.Solver;

/// <summary>
/// A plan as whole numbers of a solver: which openings are fired, and how many of each stage are in each. Firings that are not open for
/// change count as they are. Pieces of pinned firings are kept for them from the start, as search does.
/// </summary>
internal sealed class PlanModel
{
    private readonly Problem problem;
    private readonly IReadOnlyList<DraftFiring> fixedFirings;
    private readonly List<(Opening Opening, BoolVar Fired)> open = [];
    private readonly List<(int Open, int Stage, IntVar Count)> taken = [];
    private readonly List<(DraftFiring Firing, List<(int Stage, IntVar Count)> More)> filled = [];
    private readonly Dictionary<(int Kiln, int Start), RoomVariables> rooms = [];
    private readonly List<(BoolVar Takes, IntVar Count)> marks = [];

    /// <summary>Builds it.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="openings">What may be fired; none overlaps a firing that stands.</param>
    /// <param name="fixedFirings">Firings that stand, pinned ones among them.</param>
    /// <param name="stages">Stages that may be loaded; null: all.</param>
    public PlanModel(
        Problem problem, IReadOnlyList<Opening> openings, IReadOnlyList<DraftFiring> fixedFirings, IReadOnlySet<int>? stages = null)
    {
        (this.problem, this.fixedFirings) = (problem, fixedFirings);
        foreach (var opening in openings)
        {
            var most = opening.Most.Where(m => stages is null || stages.Contains(m.Stage)).ToList();
            if (most.Count == 0) continue;
            open.Add((opening, Model.NewBoolVar("")));
            foreach (var (stage, count) in most)
            {
                var x = Model.NewIntVar(0, count, "");
                taken.Add((open.Count - 1, stage, x));
                Model.Add(x <= count * open[^1].Fired);
            }
        }

        FillPins(stages);
        foreach (var kiln in problem.Kilns) OneAtATime(kiln.Index);
        Rooms();
        new ChainConstraints(this, problem).Add();
        (Late, Undone, Cost, Changes, Waiting) = new ScoreSums(problem).Of(this);
    }

    /// <summary>The model.</summary>
    public CpModel Model { get; } = new();

    /// <summary>How many variables decide it.</summary>
    public int Size => open.Count + taken.Count;

    /// <summary>Lateness.</summary>
    public Sum Late { get; }

    /// <summary>Firings left undone.</summary>
    public Sum Undone { get; }

    /// <summary>Cost.</summary>
    public Sum Cost { get; }

    /// <summary>Changes against a former plan.</summary>
    public Sum Changes { get; }

    /// <summary>Waiting.</summary>
    public Sum Waiting { get; }

    /// <summary>What may be fired.</summary>
    public IReadOnlyList<(Opening Opening, BoolVar Fired)> Open => open;

    /// <summary>Firings that stand.</summary>
    public IReadOnlyList<DraftFiring> Fixed => fixedFirings;

    /// <summary>What may be taken of each stage.</summary>
    public IEnumerable<Take> Takes => taken.Select(t => (t.Stage, t.Count, open[t.Open].Opening))
        .Select(t => new Take(
            t.Stage, t.Opening.Booking.Kiln, t.Opening.Booking.Start,
                problem.Kilns[t.Opening.Booking.Kiln].Types[t.Opening.Booking.Type].Menu,
            t.Opening.Load, t.Opening.End, t.Count))
        .Concat(filled.SelectMany(f => f.More.Select(m => new Take(
            m.Stage, f.Firing.Kiln, f.Firing.Start, -1, problem.Kilns[f.Firing.Kiln].LoadAt(f.Firing.Start),
            problem.Kilns[f.Firing.Kiln].EndOf(f.Firing.Start, f.Firing.Type), m.Count))));

    /// <summary>A variable that is 1 where some of a stage are taken.</summary>
    public BoolVar Mark(IntVar count, long most)
    {
        var mark = Model.NewBoolVar("");
        Model.Add(count <= most * mark);
        marks.Add((mark, count));
        return mark;
    }

    /// <summary>The plan of a solution.</summary>
    public Draft Read(SolverRun run)
    {
        var contents = taken.ToLookup(t => t.Open, t => new StageCount(t.Stage, (int)run.Of(t.Count)));
        var firings = open.Select((o, i) => (o.Opening.Booking, o.Fired, Contents: contents[i].Where(c => c.Count > 0).ToList()))
            .Where(o => run.Of(o.Fired) == 1)
            .Select(o => new DraftFiring(o.Booking.Kiln, o.Booking.Start, o.Booking.Type, false, o.Contents));
        var more = filled.ToDictionary(f => f.Firing,
            f => f.More.Select(m => new StageCount(m.Stage, (int)run.Of(m.Count))).Where(m => m.Count > 0));
        var standing = fixedFirings.Select(f => !more.TryGetValue(f, out var added) ? f : f with
        {
            Contents = [.. f.Contents.Concat(added).GroupBy(c => c.Stage).Select(g => new StageCount(g.Key, g.Sum(c => c.Count)))],
        });
        return Draft.Of(problem, firings.Concat(standing));
    }

    /// <summary>Tells the solver a plan to begin with.</summary>
    public void Hint(Draft plan)
    {
        Model.ClearHints();
        var byBooking = plan.Firings.Where(f => !f.IsPinned).ToDictionary(f => new Booking(f.Kiln, f.Start, f.Type));
        var values = new Dictionary<int, int>();
        foreach (var (opening, fired) in open) Model.AddHint(fired, byBooking.ContainsKey(opening.Booking) ? 1 : 0);
        foreach (var (o, stage, count) in taken)
        {
            var now = byBooking.TryGetValue(open[o].Opening.Booking, out var firing) ? CountOf(firing, stage) : 0;
            values[count.Index] = now;
            Model.AddHint(count, now);
        }

        foreach (var (firing, more) in filled)
        {
            var now = plan.Firings.FirstOrDefault(f => f.IsPinned && f.Kiln == firing.Kiln && f.Start == firing.Start);
            foreach (var (stage, count) in more)
            {
                var added = now is null ? 0 : CountOf(now, stage) - CountOf(firing, stage);
                values[count.Index] = added;
                Model.AddHint(count, added);
            }
        }

        foreach (var (mark, count) in marks) Model.AddHint(mark, values.GetValueOrDefault(count.Index) > 0 ? 1 : 0);
        foreach (var ((kiln, start), room) in rooms)
            room.Hint(Model, plan.Firings.FirstOrDefault(f => f.Kiln == kiln && f.Start == start)?.Contents ?? []);
    }

    /// <summary>How many of a stage a firing holds.</summary>
    public static int CountOf(DraftFiring firing, int stage)
    {
        foreach (var held in firing.Contents)
        {
            if (held.Stage == stage) return held.Count;
        }

        return 0;
    }

    // Pinned firings that may be filled up; what is in them by the pin stays.
    private void FillPins(IReadOnlySet<int>? stages)
    {
        for (var f = 0; f < fixedFirings.Count; f++)
        {
            var firing = fixedFirings[f];
            if (!firing.IsPinned || problem.Pins.FirstOrDefault(p => p.Kiln == firing.Kiln && p.Start == firing.Start)
                is not { Closed: false } pin) continue;
            if (pin.Contents.Sum(c => c.Count) != firing.Contents.Sum(c => c.Count)) continue;
            var kiln = problem.Kilns[firing.Kiln];
            var load = kiln.LoadAt(firing.Start);
            var packing = new Packing(kiln.Room);
            foreach (var (stage, count) in firing.Contents) packing.Add(kiln.Slots[stage], count);
            var more = new List<(int, IntVar)>();
            for (var s = 0; s < problem.Stages.Count; s++)
            {
                if (!kiln.Types[firing.Type].Takes[s] || (stages is not null && !stages.Contains(s))) continue;
                if (problem.Stages[s].Number == 0 && problem.ItemOf(s).Ready > load) continue;
                var most = packing.MostOf(kiln.Slots[s], problem.ItemOf(s).Count);
                if (most > 0) more.Add((s, Model.NewIntVar(0, most, "")));
            }

            if (more.Count > 0) filled.Add((firing, more));
        }
    }

    private void OneAtATime(int kiln)
    {
        var own = open.Where(o => o.Opening.Booking.Kiln == kiln).ToList();
        HashSet<int>? before = null;
        foreach (var load in own.Select(o => o.Opening.Load).Distinct().OrderDescending())
        {
            var at = own.Where(o => o.Opening.Load <= load && load < o.Opening.End).ToList();
            var now = at.Select(o => o.Fired.Index).ToHashSet();
            if (before is not null && now.IsSubsetOf(before)) continue;
            if (at.Count > 1) Model.AddAtMostOne(at.Select(o => o.Fired));
            before = now;
        }
    }

    private void Rooms()
    {
        foreach (var group in open.Select((o, i) => (o.Opening.Booking, o.Fired, Index: i)).GroupBy(o => (o.Booking.Kiln, o.Booking.Start)))
        {
            var indexes = group.Select(g => g.Index).ToHashSet();
            var fired = new Sum();
            foreach (var one in group) fired.Add(one.Fired);
            var room = rooms[group.Key] = new(
                problem, problem.Kilns[group.Key.Kiln], taken.Where(t => indexes.Contains(t.Open)).Select(t => (t.Stage, t.Count)), []);
            room.Add(Model, fired);
        }

        foreach (var (firing, more) in filled)
        {
            var room = rooms[(firing.Kiln, firing.Start)] = new(problem, problem.Kilns[firing.Kiln], more, firing.Contents);
            room.Add(Model, null);
        }
    }
}

/// <summary>Pieces of a stage that may be taken.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Kiln">The kiln.</param>
/// <param name="Start">Place of its start.</param>
/// <param name="Menu">Entry of its menu; −1 in a pinned firing.</param>
/// <param name="Load">When they are loaded, min.</param>
/// <param name="End">When they are unloaded, min.</param>
/// <param name="Count">How many.</param>
internal readonly record struct Take(int Stage, int Kiln, int Start, int Menu, int Load, int End, IntVar Count);
