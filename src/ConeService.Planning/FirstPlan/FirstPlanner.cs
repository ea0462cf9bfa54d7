using ConeService.Planning.Model;

namespace ConeService.Planning.FirstPlan;

/// <summary>The best of what rules of thumb and a former plan make.</summary>
internal static class FirstPlanner
{
    /// <summary>A first plan; never worse than the keeper's.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="isOver">Whether the time is over, after which no further rule is tried; null: there is time.</param>
    public static Draft Of(Problem problem, Func<bool>? isOver = null)
    {
        var filler = new CalendarFiller(problem);
        var best = RuleOfThumb.Keeper.Plan(problem);
        foreach (var rule in RuleOfThumb.All)
        {
            if (rule != RuleOfThumb.Keeper && isOver?.Invoke() == true) break;
            var plan = rule == RuleOfThumb.Keeper ? best : rule.Plan(problem);
            best = Better(best, plan);
            best = Better(best, filler.Fill(Calendar(plan)));
        }

        return problem.Announced.Count == 0 ? best : Better(best, Former(problem, filler));
    }

    /// <summary>The calendar of a plan, without pins.</summary>
    public static IEnumerable<Booking> Calendar(Draft plan) =>
        plan.Firings.Where(f => !f.IsPinned).Select(f => new Booking(f.Kiln, f.Start, f.Type));

    /// <summary>The better of two plans, the first where they are alike.</summary>
    public static Draft Better(Draft one, Draft other) => other.Score < one.Score ? other : one;

    // The former plan as it was, as far as it still holds; then filled up.
    private static Draft Former(Problem problem, CalendarFiller filler)
    {
        var bookings = Kept(problem);
        var filled = filler.Fill(bookings.Select(b => b.Booking));
        var kept = FormerPlan.Hold(problem, bookings);
        return Better(filled, kept);
    }

    private static List<(Booking Booking, Announced Told)> Kept(Problem problem)
    {
        var kept = new List<(Booking Booking, Announced Told)>();
        foreach (var told in problem.Announced)
        {
            var kiln = problem.Kilns[told.Kiln];
            var types = Enumerable.Range(0, kiln.Types.Count)
                .Where(t => kiln.Types[t].Menu == told.Menu && kiln.EndOf(told.Start, t) >= 0).ToList();
            if (types.Count == 0) continue;
            var type = types.MinBy(t => told.Contents.Where(c => !kiln.Types[t].Takes[c.Stage]).Sum(c => c.Count));
            var booking = new Booking(told.Kiln, told.Start, type);
            if (!Overlaps(problem, booking, kept.Select(k => k.Booking))) kept.Add((booking, told));
        }

        return kept;
    }

    /// <summary>Whether a booking takes its kiln while others, or pins, do.</summary>
    public static bool Overlaps(Problem problem, Booking booking, IEnumerable<Booking> others)
    {
        var kiln = problem.Kilns[booking.Kiln];
        var (from, to) = (kiln.LoadAt(booking.Start), kiln.EndOf(booking.Start, booking.Type));
        return others.Concat(problem.Pins.Select(p => new Booking(p.Kiln, p.Start, p.Type)))
            .Any(o => o.Kiln == booking.Kiln && kiln.LoadAt(o.Start) < to && from < kiln.EndOf(o.Start, o.Type));
    }
}
