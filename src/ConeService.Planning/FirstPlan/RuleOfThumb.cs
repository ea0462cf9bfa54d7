using ConeService.Firing;
using ConeService.Planning.Model;

namespace ConeService.Planning.FirstPlan;

/// <summary>Which firing a rule of thumb takes where several could be fired.</summary>
internal enum Preference
{
    /// <summary>The one that most pieces wait for.</summary>
    MostWaiting,

    /// <summary>The one that gets fullest.</summary>
    Fullest,

    /// <summary>The one whose pieces have the nearest dates.</summary>
    NearestDates,
}

/// <summary>A rule by which a person plans: kiln by kiln as they come free, what waits goes in.</summary>
/// <param name="Preference">Which firing is taken.</param>
/// <param name="WaitsForDates">True: a kiln that is not full is fired only when a date presses; false: when a piece in it has a
/// date.</param>
internal sealed record RuleOfThumb(Preference Preference, bool WaitsForDates)
{
    /// <summary>The keeper's rule: what most pieces wait for, first come first in, fired when full or when a date presses.</summary>
    public static RuleOfThumb Keeper { get; } = new(Preference.MostWaiting, true);

    /// <summary>All rules that a first plan tries.</summary>
    public static IReadOnlyList<RuleOfThumb> All { get; } =
    [
        Keeper, new(Preference.Fullest, true), new(Preference.NearestDates, true), new(Preference.MostWaiting, false),
        new(Preference.Fullest, false), new(Preference.NearestDates, false),
    ];

    /// <summary>The plan of the rule.</summary>
    public Draft Plan(Problem problem)
    {
        var loading = new Loading(problem);
        var free = new int[problem.Kilns.Count];
        Array.Fill(free, int.MinValue);
        var firings = new List<DraftFiring>();
        var slots = problem.Kilns.SelectMany(k => k.Starts.Select((_, i) => (Kiln: k.Index, Start: i, Load: k.LoadAt(i))))
            .OrderBy(s => s.Load).ThenBy(s => s.Kiln).ToList();
        foreach (var (kiln, start, load) in slots)
        {
            Patience.Check();
            if (problem.Pins.FirstOrDefault(p => p.Kiln == kiln && p.Start == start) is { } pin)
            {
                loading.Release(pin);
                Fire(new(kiln, start, pin.Type, true, pin.Closed ? pin.Contents
                    : loading.Fill(kiln, start, pin.Type, pin.Contents, s => Rank(problem, loading, s)).Contents));
            }
            else if (free[kiln] <= load && Best(problem, loading, kiln, start) is { } firing) Fire(firing);
        }

        return Draft.Of(problem, firings);

        void Fire(DraftFiring firing)
        {
            loading.Take(firing);
            firings.Add(firing);
            free[firing.Kiln] = problem.Kilns[firing.Kiln].EndOf(firing.Start, firing.Type);
        }
    }

    private DraftFiring? Best(Problem problem, Loading loading, int kiln, int start)
    {
        var model = problem.Kilns[kiln];
        var pinned = problem.Pins.Where(p => p.Kiln == kiln).Select(p => model.LoadAt(p.Start)).Where(l => l >= model.LoadAt(start))
            .DefaultIfEmpty(int.MaxValue).Min();
        DraftFiring? best = null;
        var most = double.NegativeInfinity;
        for (var t = 0; t < model.Types.Count; t++)
        {
            var end = model.EndOf(start, t);
            if (end < 0 || end > pinned) continue;
            var loaded = loading.Fill(kiln, start, t, null, s => Rank(problem, loading, s));
            if (loaded.Contents.Count == 0) continue;
            if (loaded.Fill < problem.MinimumFill
                && !(loaded.Dated && (!WaitsForDates || Presses(problem, loading, kiln, start, t, loaded))))
                continue;
            var worth = Worth(problem, loading, model.LoadAt(start), kiln, t, loaded);
            if (worth <= most) continue;
            (best, most) = (new(kiln, start, t, false, loaded.Contents), worth);
        }

        return best;
    }

    // Who waits for the next start is late.
    private static bool Presses(Problem problem, Loading loading, int kiln, int start, int type, Loaded loaded)
    {
        var model = problem.Kilns[kiln];
        var end = model.EndOf(start, type);
        var next = -1;
        for (var i = start + 1; i < model.Starts.Count && next < 0; i++) next = model.EndOf(i, type);
        return loaded.Contents.Any(c => loading.LatestEnd(c.Stage) is var latest && latest < int.MaxValue
            && (next < 0 || (end <= latest ? next > latest : problem.ItemOf(c.Stage).Due < next)));
    }

    private double Worth(Problem problem, Loading loading, int load, int kiln, int type, Loaded loaded) => Preference switch
    {
        Preference.MostWaiting => loading.TakenBy(kiln, type).Sum(s => Math.Max(0, loading.Waiting(s, load))),
        Preference.Fullest => loaded.Fill,
        _ => loaded.Contents.Sum(c => loading.LatestEnd(c.Stage) is var latest && latest < int.MaxValue
            ? c.Count * problem.ItemOf(c.Stage).Priority * 1e4 / Math.Max(Problem.Day, latest - load)
            : c.Count * 0.1),
    };

    // First come first in; with dates before that where dates are looked at.
    private long Rank(Problem problem, Loading loading, int stage)
    {
        var item = problem.ItemOf(stage);
        var ready = Math.Max(0, item.Ready);
        if (Preference == Preference.MostWaiting) return ((long)ready << 20) + stage;
        var latest = loading.LatestEnd(stage);
        return ((long)Math.Clamp(latest, 0, 1 << 22) << 20) + stage;
    }
}
