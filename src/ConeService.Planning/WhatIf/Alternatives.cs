using System.Diagnostics;
using ConeService.Contract.Plans;
using ConeService.Firing;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Model;
using ConeService.Planning.Search;

namespace ConeService.Planning.WhatIf;

/// <summary>
/// Plans for changed questions: of each change the place is looked for by filling the calendar found with it, and from the best one it is
/// searched on for a short time. What is called better was planned and is so; where nothing better was found that is no proof.
/// </summary>
/// <param name="problem">The question asked.</param>
/// <param name="plan">Its plan.</param>
/// <param name="seconds">How long all of them may take, s; 0: only steps are counted.</param>
/// <param name="steps">Calendars tried for each place and for each search; 0: as many as the time allows.</param>
/// <param name="seed">Seed of the searches.</param>
internal sealed class Alternatives(Problem problem, Draft plan, double seconds, long steps, int seed)
{
    private const int MostPlaces = 40;
    private readonly long begun = Stopwatch.GetTimestamp();
    private readonly List<Booking> calendar = [.. FirstPlanner.Calendar(plan)];

    /// <summary>The alternatives, one of each change that can be made.</summary>
    public IReadOnlyList<Alternative> All()
    {
        var found = new List<Alternative>();
        if (KilnDay() is { } day) found.Add(day);
        if (Shelves() is { } shelves) found.Add(shelves);
        if (DueDate() is { } date) found.Add(date);
        return found;
    }

    private double Gone => seconds > 0 ? Stopwatch.GetElapsedTime(begun).TotalSeconds / seconds : 0;

    // A second kiln like one that there is, for one firing.
    private Alternative? KilnDay()
    {
        (Booking Booking, Score Score)? best = null;
        foreach (var kiln in problem.Kilns)
        {
            // Of many kilns with many pieces those that there is time for.
            if (best is not null && Gone > 0.25) break;
            var places = kiln.Starts.Select((_, i) => i)
                .SelectMany(i => kiln.Types.Select((_, t) => new Booking(problem.Kilns.Count, i, t)))
                .Where(b => kiln.EndOf(b.Start, b.Type) >= 0 && kiln.Types[b.Type].Takes.Contains(true)).ToList();
            if (places.Count == 0) continue;
            var filler = new CalendarFiller(Changes.KilnMore(problem, kiln.Index, [.. kiln.Starts.Select((_, i) => i)]));
            foreach (var place in Some(places, MostPlaces / problem.Kilns.Count, 0.25))
            {
                var score = filler.Fill([.. calendar, place]).Score;
                if (best is null || score < best.Value.Score) best = (place with { Kiln = kiln.Index }, score);
            }
        }

        if (best is not { Booking: var at }) return null;
        var changed = Changes.KilnMore(problem, at.Kiln, [at.Start]);
        return Searched(changed, [.. calendar, new(problem.Kilns.Count, 0, at.Type)], 0.35,
            (p, d, b) => new(WhatIfChange.KilnDay, at.Kiln, at.Start, null, p, d, b));
    }

    private Alternative? Shelves()
    {
        (int Kiln, Score Score)? best = null;
        foreach (var kiln in Some([.. problem.Kilns.Where(k => k.Types.Count > 0).Select(k => k.Index)], MostPlaces, 0.5))
        {
            var score = new CalendarFiller(Changes.ShelvesMore(problem, kiln)).Fill(calendar).Score;
            if (best is null || score < best.Value.Score) best = (kiln, score);
        }

        return best is not { Kiln: var at } ? null
            : Searched(Changes.ShelvesMore(problem, at), calendar, 0.65, (p, d, b) => new(WhatIfChange.Shelves, at, null, null, p, d, b));
    }

    private Alternative? DueDate()
    {
        (int Due, Score Score)? best = null;
        foreach (var due in Some([.. problem.Items.Where(i => i.DueBinds).Select(i => i.Due!.Value).Distinct().Order()], MostPlaces, 0.8))
        {
            var score = new CalendarFiller(Changes.DueLater(problem, due)).Fill(calendar).Score;
            if (best is null || score < best.Value.Score) best = (due, score);
        }

        return best is not { Due: var at } ? null
            : Searched(Changes.DueLater(problem, at), calendar, 1, (p, d, b) => new(WhatIfChange.DueDate, null, null, at, p, d, b));
    }

    // The first always, and of the others as many as the time allows, spread evenly.
    private IEnumerable<T> Some<T>(List<T> all, int most, double until)
    {
        var count = Math.Clamp(most, 1, Math.Max(1, all.Count));
        for (var i = 0; i < Math.Min(count, all.Count); i++)
        {
            Patience.Check();
            if (i > 0 && Gone > until) yield break;
            yield return all[(int)((long)i * all.Count / count)];
        }
    }

    private Alternative Searched(Problem changed, IReadOnlyList<Booking> from, double until, Func<Problem, Draft, bool, Alternative> make)
    {
        // The plan as it is holds for each of these changes.
        var same = Draft.Of(changed, plan.Firings);
        var start = FirstPlanner.Better(same, new CalendarFiller(changed).Fill(from));
        var search = new CalendarSearch(changed, seed);
        var (began, most) = (Gone, steps > 0 ? steps : search.WorthTrying);
        var found = search.Search(start,
            done => Math.Max(done / (double)most, seconds > 0 ? (Gone - began) / Math.Max(1e-6, until - began) : 0));
        // Who has a date later is late no more, in the same plan; that alone is better too. Less waiting is not: nobody is told of it, and
        // the numbers that are told would be those of the plan as it is.
        var (then, now) = (found.Score, plan.Score);
        return make(changed, found, (then.Late, then.Undone, then.Cost).CompareTo((now.Late, now.Undone, now.Cost)) < 0);
    }
}
