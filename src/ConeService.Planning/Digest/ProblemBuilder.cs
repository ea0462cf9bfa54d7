using ConeService.Contract.Plans;
using ConeService.Contract.Texts;
using ConeService.Planning.Model;
using ConeService.Planning.Requests;
using Problem = ConeService.Planning.Model.Problem;

namespace ConeService.Planning.Digest;

/// <summary>Puts a problem together from what was read.</summary>
internal sealed class ProblemBuilder(
    Acceptance acceptance, Moments moments, IReadOnlyList<ReadKiln> kilns, IReadOnlyList<IReadOnlyList<DigestedFiring>> fired,
    Programmes programmes, UsualSchedules schedules, IReadOnlyList<ReadPiece> pieces, int horizon, Spans? staffed,
    List<PlanAssumption> assumed)
{
    private readonly List<Item> items = [];
    private readonly List<Stage> stages = [];
    private readonly List<(SortStage Sort, ReadPiece Piece)> wares = [];
    private readonly List<SlowWare> classes = [];
    private readonly List<PlanFinding> warnings = [];

    /// <summary>Builds it.</summary>
    public Digested Build(
        Dictionary<string, Sort> sorts, int fill, IReadOnlyList<ReadGiven> pins, IReadOnlyList<ReadGiven> announced,
        IEnumerable<PlanFinding> told)
    {
        warnings.AddRange(told);
        var ends = kilns.Select((k, i) => Ends(k, fired[i], [.. pins.Where(p => p.Kiln == i)])).ToList();
        var last = Math.Max(horizon, ends.SelectMany(e => e.Ends).SelectMany(e => e).DefaultIfEmpty().Max());
        var digested = AddItems(sorts, pins, announced, last);
        var models = kilns.Select((k, i) => Model(k, i, ends[i])).ToList();
        var problem = new Problem
        {
            Horizon = horizon,
            Kilns = models,
            Items = items,
            Stages = stages,
            MinimumFill = fill,
            Pins = [.. new PinMaker(kilns, fired, programmes, models, items, stages, wares, digested, warnings).Pins(pins)
                .OrderBy(p => models[p.Kiln].LoadAt(p.Start))],
            Announced = new PinMaker(kilns, fired, programmes, models, items, stages, wares, digested, warnings).Announced(announced),
        };
        return new(
            problem, moments, [.. kilns.Select((k, i) => new DigestedKiln(k.Id, fired[i]))], digested,
            [.. kilns.Select((k, i) => k.Menu.Select((_, m) => wares.Select(w => w.Sort.Accepted[i][m]).ToArray()).ToArray())],
            [.. wares.Select(w => w.Sort.Ware)], warnings, assumed, schedules,
            programmes.Class, staffed);
    }

    private (List<int> Starts, List<int[]> Ends) Ends(ReadKiln kiln, IReadOnlyList<DigestedFiring> menu, List<ReadGiven> pins)
    {
        var starts = kiln.Starts.Concat(pins.Select(p => p.Start)).Distinct().Order().ToList();
        return (starts, [.. menu.Select(m => starts.Select(start =>
        {
            var opening = start + m.Hours.Minutes;
            // Of what lies beyond nobody told when somebody is there.
            var end = (staffed is null ? opening : staffed.NextWithin(opening) ?? Math.Max(opening, horizon)) + kiln.Unloading;
            return kiln.Closed.Overlap(start - kiln.Loading, end) && !pins.Exists(p => p.Start == start && p.Menu == m.Entry) ? -1 : end;
        }).ToArray())]);
    }

    private List<DigestedPiece> AddItems(
        Dictionary<string, Sort> sorts, IReadOnlyList<ReadGiven> pins, IReadOnlyList<ReadGiven> announced, int last)
    {
        var named = pins.Concat(announced).SelectMany(g => g.Pieces.Select(p => p.Piece)).ToHashSet();
        var pinned = pins.SelectMany(g => g.Pieces.Select(p => p.Piece)).ToHashSet();
        var groups = new Dictionary<(string, object), List<int>>();
        for (var i = 0; i < pieces.Count; i++)
        {
            var p = pieces[i];
            // What somebody was told of by name stays by itself.
            var key = (p.SortKey, (object)(p.Ready, p.Due, p.Priority, p.Handling, p.Stack, named.Contains(i) ? i : -1));
            if (groups.TryGetValue(key, out var alike)) alike.Add(i);
            else groups[key] = [i];
        }

        var digested = new DigestedPiece[pieces.Count];
        foreach (var group in groups.Values)
        {
            var (piece, sort) = (pieces[group[0]], sorts[pieces[group[0]].SortKey]);
            var (chain, tooBig) = Chain(piece, sort);
            var lacking = tooBig ? sort.Stages[chain.Count] : sort.TooBig;
            if (chain.Count == 0 && pinned.Contains(group[0])) chain = [Forced(piece)];
            int? item = chain.Count == 0 ? null : items.Count;
            int? refused = chain.Count > (sort.Then.Count) ? null : chain.Count;
            foreach (var i in group)
            {
                digested[i] = new(
                    pieces[i].Id, pieces[i].Count, item, sort.Then.Count + 1, refused,
                    lacking is not null ? [] : sort.Reasons, lacking is not null,
                    refused is null ? null : lacking is not null ? NeedsRoom(piece, lacking) : sort.Needs,
                    refused is null || lacking is not null ? [] : sort.Needed);
            }

            if (item is not null) Add(piece, group.Sum(i => pieces[i].Count), chain, refused is null, last);
            if (chain.Exists(c => c.ToLookAt)) warnings.AddRange(
                group.Select(i => new PlanFinding(PlanWarningCodes.LookAtPiece, pieces[i].Pointer, pieces[i].Id)));
        }

        return [.. digested];
    }

    // What stands against it in the roomiest kiln that runs a firing for it.
    private Message NeedsRoom(ReadPiece piece, SortStage stage)
    {
        var run = kilns.Where((k, i) => stage.Accepted[i].Contains(true)).ToList();
        var high = run.MaxBy(k => k.Room.Room.Height - k.Room.Room.Shelf)!;
        var (has, takes) = (high.Room.Room.Height - high.Room.Room.Shelf, piece.Size.Height + high.Room.Factors.Above);
        if (takes > has) return Message.Of("plans.needs-height", ("takes", takes), ("kiln", high.Id), ("has", has));
        var wide = run.MaxBy(k => k.Room.Shelf.Width * k.Room.Shelf.Depth)!;
        return Message.Of(
            "plans.needs-shelf", ("width", piece.Size.Width), ("depth", piece.Size.Depth ?? piece.Size.Width), ("kiln", wide.Id),
            ("across", Math.Floor(wide.Room.Shelf.Width)), ("along", Math.Floor(wide.Room.Shelf.Depth)));
    }

    private (List<SortStage> Chain, bool TooBig) Chain(ReadPiece piece, Sort sort)
    {
        var chain = new List<SortStage>();
        foreach (var stage in sort.Stages)
        {
            if (!kilns.Where((k, i) => stage.Accepted[i].Contains(true)
                && k.Room.Slot(piece.Size, stage.IsBisque, piece.Stack).Share > 0).Any()) return (chain, true);
            chain.Add(stage);
        }

        return (chain, false);
    }

    private SortStage Forced(ReadPiece piece) =>
        new([.. kilns.Select(k => new bool[k.Menu.Count])], piece.Sent.Piece!.State.Text == "bone-dry", piece.Ware, false);

    private void Add(ReadPiece piece, int count, List<SortStage> chain, bool whole, int last)
    {
        var ware = programmes.Class(chain[^1].Ware.Piece);
        var least = fired.SelectMany((f, i) => f.Where(p => chain[^1].Accepted[i][p.Entry] && p.Ware.Covers(ware)))
            .Select(p => p.Hours.Minutes).DefaultIfEmpty().Min();
        // A chain that stops short of its end has no date to meet.
        var due = whole ? piece.Due : null;
        var binds = due < horizon + least;
        var undone = binds ? Problem.Lateness(new(0, 1, 0, due, piece.Priority, 0, 0, 0, true, 0), last + Problem.Day) : 0;
        items.Add(new(items.Count, count, piece.Ready, due, piece.Priority, piece.Handling, stages.Count, chain.Count, binds, undone));
        for (var n = 0; n < chain.Count; n++)
        {
            stages.Add(new(stages.Count, items.Count - 1, n, n == chain.Count - 1));
            wares.Add((chain[n], piece));
            classes.Add(programmes.Class(chain[n].Ware.Piece));
        }
    }

    private KilnModel Model(ReadKiln kiln, int index, (List<int> Starts, List<int[]> Ends) times)
    {
        var slots = wares.Select(w => kiln.Room.Slot(w.Piece.Size, w.Sort.IsBisque, w.Piece.Stack)).ToList();
        var types = new List<FiringType>();
        for (var p = 0; p < fired[index].Count; p++)
        {
            var (programme, entry) = (fired[index][p], kiln.Menu[fired[index][p].Entry].Sent);
            bool Goes(int stage) => wares[stage].Sort.Accepted[index][programme.Entry] && slots[stage].Share > 0
                && programme.Ware.Covers(classes[stage]);
            var companies = Enumerable.Range(0, stages.Count).Where(Goes)
                .GroupBy(s => acceptance.CompanyOf(kiln.Sent.Kiln!, entry, wares[s].Sort.Ware)).ToList();
            DigestBounds.Spoiling(companies.Count(c => c.Key.Coats is not null));
            var coats = companies.ConvertAll(c => c.Select(s => wares[s].Sort.Ware.Coats).Distinct().Count());
            foreach (var set in Companies.Of(companies.Count, (i, j) => companies[i].Key.MayShare(companies[j].Key), i => coats[i]))
            {
                var takes = new bool[stages.Count];
                foreach (var stage in set.SelectMany(c => companies[c])) takes[stage] = true;
                // What goes into a quicker one needs no slow one.
                if (set.Count > 0 && !types.Exists(t => t.Menu == programme.Entry && t.Cost <= programme.Cost
                    && !takes.Where((takes, s) => takes && !t.Takes[s]).Any()))
                    types.Add(new(programme.Entry, takes, programme.Cost, p));
            }
        }

        return new()
        {
            Index = index,
            Room = kiln.Room.Room,
            Starts = times.Starts,
            Loading = kiln.Loading,
            Types = types,
            Ends = times.Ends,
            Slots = slots,
        };
    }
}
