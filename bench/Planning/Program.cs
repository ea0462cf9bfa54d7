using System.Diagnostics;
using System.Globalization;
using ConeService.Bench.Planning;
using ConeService.Contract.Plans;
using ConeService.Data;
using ConeService.Firing;
using ConeService.Planning;
using ConeService.Planning.Digest;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Model;

// Seconds from the command line, or 1 5 20; then rows by their first words.
var seconds = args.Where(a => double.TryParse(a, CultureInfo.InvariantCulture, out _))
    .Select(a => double.Parse(a, CultureInfo.InvariantCulture))
    .DefaultIfEmpty(0).ToList();
if (seconds is [0]) seconds = [1, 5, 20];
var wanted = args.Where(a => a.Contains('x', StringComparison.Ordinal)).ToList();
(int Pieces, int[] Kilns, int Weeks)[] rows =
[
    (20, [0, 1], 2), (60, [0], 2), (60, [0, 1], 3), (60, [0, 0, 1, 1], 2), (200, [1], 4), (200, [1, 2], 4), (500, [1, 2], 6),
        (500, [1, 1, 2, 2], 4),
    (2000, [2, 2, 3], 8), (2000, [2, 2, 3, 3], 8),
];
var reference = FiringReference.Open(DatasetLoader.LoadEmbedded());
var planner = new Planner(reference);
_ = await planner.PlanAsync(DrawnStudio.Of(20, [0], 2, 9), new(0.5));
Console.WriteLine("| pieces × kilns × weeks | digest, s | first plan, s | keeper | " + string.Join(" | ",
    seconds.Select(s => $"after {s} s")) + " | bound | took, s | MB |");
Console.WriteLine("| --- | --- | --- | --- | " + string.Concat(seconds.Select(_ => "--- | ")) + "--- | --- | --- |");
foreach (var (pieces, kilns, weeks) in rows)
{
    var name = $"{pieces}x{kilns.Length}x{weeks}";
    if (wanted.Count > 0 && !wanted.Contains(name)) continue;
    var request = DrawnStudio.Of(pieces, kilns, weeks, 1);
    var begun = Stopwatch.GetTimestamp();
    var problem = new Digester(reference).Digest(request).Problem;
    var digest = Stopwatch.GetElapsedTime(begun).TotalSeconds;
    begun = Stopwatch.GetTimestamp();
    _ = FirstPlanner.Of(problem);
    var first = Stopwatch.GetElapsedTime(begun).TotalSeconds;
    var keeper = RuleOfThumb.Keeper.Plan(problem);
    var (cells, times) = (new List<string>(), new List<string>());
    FiringPlan? last = null;
    foreach (var s in seconds)
    {
        begun = Stopwatch.GetTimestamp();
        var plan = last = await planner.PlanAsync(request, new(s));
        times.Add(Text(Stopwatch.GetElapsedTime(begun).TotalSeconds, "0.00"));
        var sum = plan.Summary;
        cells.Add(Cell(sum.Late, sum.UndoneFirings, (long)(sum.Cost * 100)) + (sum.ProvenOptimal ? " proven" : ""));
    }

    var bound = last!.Summary;
    var gap = bound.LowerBound is { } low ? $"{Text(low, "0.0")}, gap {Text(100 * bound.Gap!.Value, "0.0")} %" : "–";
    Console.WriteLine(
        $"| {pieces} × {kilns.Length} × {weeks} | {Text(digest, "0.00")} | {Text(first, "0.00")} "
        + $"| {Cell(Late(problem, keeper), keeper.Score.Undone, keeper.Score.Cost)} | {string.Join(" | ", cells)} "
        + $"| {bound.LateBound} late weight, {bound.UndoneBound} undone, {gap} "
        + $"| {string.Join(", ", times)} | {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} |");
}

return 0;

static string Cell(int late, long undone, long cost) =>
    (late == 0 ? "" : $"{late} late, ") + (undone == 0 ? "" : $"{undone} undone, ") + Text(cost / 100.0, "0.0");

static string Text(double number, string format) => number.ToString(format, CultureInfo.InvariantCulture);

static int Late(Problem problem, Draft plan)
{
    var done = new int[problem.Items.Count];
    var late = 0;
    foreach (var firing in plan.Firings)
    {
        foreach (var (stage, count) in firing.Contents.Where(c => problem.Stages[c.Stage].IsLast))
        {
            done[problem.Stages[stage].Item] += count;
            if (Problem.Lateness(problem.ItemOf(stage), problem.Kilns[firing.Kiln].EndOf(firing.Start, firing.Type)) > 0) late += count;
        }
    }

    return late + problem.Items.Where(i => i.UndoneLateness > 0).Sum(i => i.Count - done[i.Index]);
}
