using ConeService.Data;
using ConeService.Firing.Room;
using ConeService.Planning.Model;

namespace ConeService.Bench.Year;

/// <summary>Pieces alike that came onto the shelves together. Times are minutes from the start of the year.</summary>
/// <param name="Id">Number.</param>
/// <param name="Sort">What they are.</param>
/// <param name="Glaze">The firing that they get after the bisque: entry of the menu.</param>
/// <param name="Count">How many.</param>
/// <param name="Ready">When they were dry.</param>
/// <param name="Due">When they were promised; null: not.</param>
internal sealed record Batch(int Id, int Sort, int Glaze, int Count, int Ready, int? Due);

/// <summary>Ware that waits, or will: the next firing it needs, and from when.</summary>
internal sealed record Waiting(Batch Batch, int Stage, int From, int Count);

/// <summary>
/// An invented studio: two electric kilns of 198 and 74 L, bisque and two glaze firings, started at 10:30 or 19:00 on working days. Hours
/// and energy are those that the fit gives for such kilns (samples/studio). A firing takes longer or shorter than foreseen by a drawn span.
/// </summary>
internal sealed class Studio
{
    public const int Day = Problem.Day;
    public const int Week = 7 * Day;
    public const int Handling = 2 * Day;
    private const int Loading = 90;
    private const int Unloading = 45;
    private const double MostEarly = -120;
    private const double MostLate = 360;

    private static readonly (decimal Height, decimal Width, decimal? Depth, Stack? Stack)[] Sorts =
    [
        (100, 125, 90, null), (120, 78, null, null), (75, 160, null, new(3, 28)), (30, 255, null, new(4, 14)), (205, 150, 120, null),
        (255, 130, null, null), (25, 150, null, new(4, 12)), (200, 215, null, null), (110, 260, null, new(2, 40)),
            (60, 110, null, new(3, 25)),
    ];

    private static readonly (int Minutes, double KilowattHours)[][] Menu =
    [
        [(1830, 63.8), (2010, 65.7), (1770, 52.0)],
        [(1590, 29.5), (1800, 30.6), (1500, 24.3)],
    ];

    private readonly MeasuredRoom[] rooms;
    private readonly int seed;

    public Studio(int seed, double load)
    {
        this.seed = seed;
        var factors = RoomFactors.Of(DatasetLoader.LoadEmbedded())!;
        rooms =
        [
            MeasuredRoom.Of(factors, 725, 590, 590, true, new(20, 8, true, 540, 540, 1, 20), null)!,
            MeasuredRoom.Of(factors, 510, 430, 430, true, new(15, 6, true, 380, 380, 1, 15), null)!,
        ];
        Batches = Draw(new(seed), load);
    }

    public static int Weeks => 52;

    public IReadOnlyList<Batch> Batches { get; }

    public static int Kilns => Menu.Length;

    public static int Cost(int kiln, int menu) => (int)Math.Round(100 * Menu[kiln][menu].KilowattHours);

    /// <summary>When a firing is unloaded that takes as long as foreseen.</summary>
    public static int Foreseen(int kiln, int start, int menu) => Staffed(start + Menu[kiln][menu].Minutes) + Unloading;

    /// <summary>When it really is.</summary>
    public int Really(int kiln, int start, int menu)
    {
        var chance = new Random((((seed * 31) + kiln) * 1_000_003) + start);
        return Staffed(start + Menu[kiln][menu].Minutes + (int)(MostEarly + ((MostLate - MostEarly) * chance.NextDouble()))) + Unloading;
    }

    /// <summary>The question that a keeper has at a moment.</summary>
    /// <param name="now">The moment, which the minutes of the problem are counted from.</param>
    /// <param name="horizon">How far ahead, min.</param>
    /// <param name="waiting">Ware that waits, or comes out of a kiln by then.</param>
    /// <param name="free">By kiln: from when it is free.</param>
    /// <param name="end">When firings are unloaded, by kiln, start and menu.</param>
    /// <param name="margin">How long before its date each piece shall be done, min.</param>
    /// <param name="fill">How full a kiln must be unless a date asks for it, in 1/10,000.</param>
    public Problem Ask(int now, int horizon, IReadOnlyList<Waiting> waiting, int[] free, Func<int, int, int, int> end, int margin = 0,
        int fill = 7000)
    {
        var (items, stages, of) = (new List<Item>(), new List<Stage>(), new List<(Waiting Ware, int Stage)>());
        foreach (var ware in waiting)
        {
            var (count, first) = (2 - ware.Stage, stages.Count);
            var least = Menu.Min(m => m[ware.Batch.Glaze].Minutes);
            var due = ware.Batch.Due - now - margin;
            var binds = due < horizon + least;
            var undone = binds ? Problem.Lateness(new(0, 1, 0, due, 1, 0, 0, 0, true, 0), horizon + (4 * Day)) : 0;
            items.Add(new(items.Count, ware.Count, ware.From - now, due, 1, Handling, first, count, binds, undone));
            for (var n = 0; n < count; n++)
            {
                stages.Add(new(stages.Count, items.Count - 1, n, n == count - 1));
                of.Add((ware, ware.Stage + n));
            }
        }

        var kilns = Enumerable.Range(0, Kilns).Select(k =>
        {
            var starts = Starts(now, now + horizon).ToList();
            return new KilnModel
            {
                Index = k,
                Room = rooms[k].Room,
                Starts = [.. starts.Select(s => s - now)],
                Loading = Loading,
                Types = [.. Enumerable.Range(0, 3).Select(m => new FiringType(
                    m, [.. of.Select(o => Menued(o) == m && Slot(k, o).Share > 0)], Cost(k, m), m))],
                Ends = [.. Enumerable.Range(0, 3)
                    .Select(m => starts.Select(s => s - Loading < free[k] ? -1 : end(k, s, m) - now).ToArray())],
                Slots = [.. of.Select(o => Slot(k, o))],
            };
        }).ToList();
        return new() { Horizon = horizon, Kilns = kilns, Items = items, Stages = stages, MinimumFill = fill };
    }

    private static int Menued((Waiting Ware, int Stage) of) => of.Stage == 0 ? 0 : of.Ware.Batch.Glaze;

    private Slot Slot(int kiln, (Waiting Ware, int Stage) of)
    {
        var (height, width, depth, stack) = Sorts[of.Ware.Batch.Sort];
        return rooms[kiln].Slot(new(height, width, depth), of.Stage == 0, stack);
    }

    // Monday to Saturday; the year begins on a Monday.
    private static IEnumerable<int> Starts(int from, int to)
    {
        for (var day = from / Day; day * Day < to; day++)
        {
            if (day % 7 == 6) continue;
            foreach (var time in new[] { 630, 1140 })
            {
                var start = (day * Day) + time;
                if (start - Loading >= from && start < to) yield return start;
            }
        }
    }

    private static int Staffed(int at)
    {
        while (true)
        {
            var (day, time) = (at / Day, at % Day);
            if (day % 7 != 6 && time is >= 540 and < 1200) return at;
            at = day % 7 != 6 && time < 540 ? (day * Day) + 540 : ((day + 1) * Day) + 540;
        }
    }

    // Courses come in waves of ten weeks; seven of ten batches were promised, three to six weeks ahead.
    private static List<Batch> Draw(Random random, double load)
    {
        var batches = new List<Batch>();
        for (var week = 0; week < Weeks - 4; week++)
        {
            var many = load * (0.6 + (0.8 * (week % 10) / 9.0)) * (0.7 + (0.6 * random.NextDouble()));
            for (double pieces = 0; pieces < many;)
            {
                var count = 1 + random.Next(10);
                var ready = (week * Week) + random.Next(6 * Day);
                int? due = random.NextDouble() < 0.7 ? ready + ((21 + random.Next(22)) * Day) : null;
                batches.Add(new(batches.Count, random.Next(Sorts.Length), random.NextDouble() < 0.7 ? 1 : 2, count, ready, due));
                pieces += count;
            }
        }

        return batches;
    }
}
