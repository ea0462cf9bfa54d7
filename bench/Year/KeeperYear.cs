using ConeService.Planning.Bounds;
using ConeService.Planning.FirstPlan;

namespace ConeService.Bench.Year;

/// <summary>The year of a keeper by rule: at each start what most pieces wait for, first come first in, fired when full enough or when a
/// date presses. The keeper sees what stands on the shelves and when kilns really come free.</summary>
internal static class KeeperYear
{
    public static Outcome Run(Studio studio, int fill = 7000)
    {
        var waiting = studio.Batches.Select(b => new Waiting(b, 0, b.Ready, b.Count)).ToList();
        var problem = studio.Ask(0, Studio.Weeks * Studio.Week, waiting, new int[Studio.Kilns], studio.Really, fill: fill);
        var plan = RuleOfThumb.Keeper.Plan(problem);
        var firings = plan.Firings.Select(f => (f.Kiln, problem.Kilns[f.Kiln].Types[f.Type].Menu)).ToList();
        var done = plan.Firings.SelectMany(f => f.Contents.Where(c => problem.Stages[c.Stage].IsLast).Select(c =>
            (waiting[problem.Stages[c.Stage].Item].Batch, c.Count, problem.Kilns[f.Kiln].EndOf(f.Start, f.Type)))).ToList();
        return Outcome.Of(studio, firings, done, 0, 0);
    }

    /// <summary>Energy for each piece, kWh, that no year of these pieces betters: every kiln always full to the last place.</summary>
    public static double LeastEnergy(Studio studio)
    {
        var waiting = studio.Batches.Select(b => new Waiting(b, 0, b.Ready, b.Count)).ToList();
        var problem = studio.Ask(0, Studio.Weeks * Studio.Week, waiting, new int[Studio.Kilns], Studio.Foreseen);
        return AloneBounds.Of(problem).Cost / 100.0 / studio.Batches.Sum(b => b.Count);
    }
}
