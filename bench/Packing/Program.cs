using System.Globalization;
using ConeService.Bench.Packing;
using ConeService.Data;
using ConeService.Firing.Room;

// What the rule of layers lets into a kiln, beside what geometry finds to go in. Arguments: loads a kiln, tries a load, which kiln (from
// 0).
var loads = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 40;
var tries = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 60;
var factors = RoomFactors.Of(DatasetLoader.LoadEmbedded())!;
(string Name, decimal Height, decimal Across, decimal Along, bool IsRound, ShelfLayer Shelf)[] kilns =
[
    ("74 L, round", 510, 430, 430, true, new(15, 8, true, 380, 380, 1, 15)),
    ("198 L, round", 725, 590, 590, true, new(20, 10, true, 540, 540, 1, 20)),
    ("283 L, box", 760, 610, 610, false, new(20, 12, false, 560, 560, 1, 20)),
    ("680 L, box", 1180, 760, 760, false, new(20, 16, false, 700, 700, 1, 20)),
];
Console.WriteLine(
    "| kiln | ware | factor | side by side | taken of what goes in: least, mean, most | overfilled loads | lists that do not stand |");
Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- |");
var rows = new List<(int Order, string Text)>();
var asked = args.Length > 2 ? [int.Parse(args[2], CultureInfo.InvariantCulture)] : Enumerable.Range(0, kilns.Length);
bool[] wares = [true, false];
Parallel.ForEach(
    from k in asked from mixed in wares select (k, mixed),
    new ParallelOptions { MaxDegreeOfParallelism = 2 },
    job =>
    {
        var kiln = kilns[job.k];
        var random = new Random(1000 + job.k);
        var backlogs = Enumerable.Range(0, loads).Select(_ => job.mixed ? Wares.Mixed(random, 400) : Wares.Alike(random, 400)).ToList();
        var packer = new LoadPacker(
            new(kiln.IsRound, kiln.Shelf.Width + (double)factors.Apart, kiln.Shelf.Depth + (double)factors.Apart),
                (double)(kiln.Height - factors.Lid),
            kiln.Shelf.Thickness, kiln.Shelf.Layers, (double)factors.Above, (double)factors.Apart);
        var usual = kiln.Shelf.IsRound ? factors.Round : factors.Rectangular;
        // What the rule lets in is begun with, and as much more of the backlog goes in as is found to: geometry's own load.
        var best = new double[loads];
        foreach (var (beside, factor) in new[] { (false, usual), (true, 0.60), (true, 0.65), (true, 0.68),
            (true, 0.70), (true, 0.72), (true, 0.75), (true, 0.80) })
        {
            var shares = new List<double>();
            var (over, amiss) = (0, 0);
            for (var i = 0; i < loads; i++)
            {
                var room = MeasuredRoom.Of(factors with { CountsSideBySide = beside }, kiln.Height, kiln.Across, kiln.Along, kiln.IsRound,
                    kiln.Shelf, factor)!;
                var taken = Taken(room, backlogs[i]);
                if (!packer.GoesIn(taken, tries)) over++;
                if (ShelfPlan.Of(taken.Select((p, n) => (n, 1, Slot(room, p))))
                    .Any(l => !packer.GoOnOne([.. l.Contents.Select(c => taken[c.Key])], tries))) amiss++;
                if (best[i] == 0) best[i] = Weight(
                    Most(packer, backlogs[i], Taken(
                    MeasuredRoom.Of(factors, kiln.Height, kiln.Across, kiln.Along, kiln.IsRound, kiln.Shelf, usual)!, backlogs[i])));
                shares.Add(Weight(taken) / best[i]);
            }

            lock (rows)
            {
                rows.Add(((job.k * 100) + (job.mixed ? 0 : 50) + rows.Count % 50, string.Create(CultureInfo.InvariantCulture,
                    $"| {kiln.Name} | {(job.mixed ? "mixed" : "alike")} | {factor:0.00} | {(beside ? "yes" : "no")} "
                    + $"| {shares.Min():0.00}, {shares.Average():0.00}, {shares.Max():0.00} "
                    + $"| {100.0 * over / loads:0} % | {100.0 * amiss / loads:0} % |")));
                Console.WriteLine(rows[^1].Text);
            }
        }
    });

// As a plan loads: each piece that still goes in, in the order of the backlog.
List<Piece> Taken(MeasuredRoom room, List<Piece> backlog)
{
    var packing = new ConeService.Firing.Room.Packing(room.Room);
    var taken = new List<Piece>();
    foreach (var piece in backlog)
    {
        // Of the volume that the load check lets in nothing is asked here: it is a rule of its own.
        var slot = Slot(room, piece);
        if (packing.MostOf(slot, 1) == 0) continue;
        packing.Add(slot, 1);
        taken.Add(piece);
    }

    return taken;
}

static Slot Slot(MeasuredRoom room, Piece p) => room.Slot(new(p.Height, p.Width, p.Depth), bisque: false, null) with { Volume = 0 };

// Begun with what the rule lets in, as far as it goes in; then each piece of the backlog that is found to go in beside it.
static List<Piece> Most(LoadPacker packer, List<Piece> backlog, List<Piece> begun)
{
    var taken = new List<Piece>(begun);
    while (!packer.GoesIn(taken, 40)) taken.RemoveAt(taken.Count - 1);
    var (misses, left) = (0, new HashSet<Piece>(backlog, ReferenceEqualityComparer.Instance));
    left.ExceptWith(taken);
    foreach (var piece in backlog.Where(left.Contains))
    {
        taken.Add(piece);
        if (packer.GoesIn(taken, 8)) continue;
        taken.RemoveAt(taken.Count - 1);
        if (++misses == 15) break;
    }

    return taken;
}

static double Weight(List<Piece> load) => load.Sum(p => (double)(p.Width * (p.Depth ?? p.Width * 0.785m) * p.Height));
