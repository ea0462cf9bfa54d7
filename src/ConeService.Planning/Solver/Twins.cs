using ConeService.Planning.Model;

namespace ConeService.Planning.Solver;

/// <summary>Kilns alike in everything: exchanging their calendars changes nothing, so the busier one comes first.</summary>
internal static class Twins
{
    /// <summary>Pairs of neighbours that are alike.</summary>
    public static IReadOnlyList<(int One, int Other)> Of(Problem problem)
    {
        var pairs = new List<(int, int)>();
        for (var k = 0; k < problem.Kilns.Count; k++)
        {
            var next = Enumerable.Range(k + 1, problem.Kilns.Count - k - 1).Where(o => Alike(problem, k, o)).ToList();
            if (next.Count > 0) pairs.Add((k, next[0]));
        }

        return pairs;
    }

    /// <summary>By kiln: the first that is alike, which may be itself.</summary>
    public static int[] Firsts(Problem problem) =>
        [.. problem.Kilns.Select(k => Enumerable.Range(0, k.Index).Where(o => Alike(problem, o, k.Index)).Append(k.Index).First())];

    /// <summary>Adds that order to a model.</summary>
    public static void Add(Problem problem, PlanModel plan)
    {
        foreach (var (one, other) in Of(problem))
        {
            var sum = new Sum();
            foreach (var (opening, fired) in plan.Open)
            {
                if (opening.Booking.Kiln == one) sum.Add(fired, Weight(opening.Booking.Start));
                else if (opening.Booking.Kiln == other) sum.Add(fired, -Weight(opening.Booking.Start));
            }

            if (!sum.IsConstant) plan.Model.Add(sum.Expression >= 0);
        }
    }

    /// <summary>A plan in that order.</summary>
    public static Draft Order(Problem problem, Draft plan)
    {
        var firings = plan.Firings.ToList();
        var pairs = Of(problem);
        for (var again = true; again;)
        {
            again = false;
            foreach (var (one, other) in pairs)
            {
                if (Busy(one) >= Busy(other)) continue;
                firings = [.. firings.Select(f => f.Kiln == one ? f with { Kiln = other } : f.Kiln == other ? f with { Kiln = one } : f)];
                again = true;
            }
        }

        return Draft.Of(problem, firings);

        long Busy(int kiln) => firings.Where(f => f.Kiln == kiln).Sum(f => Weight(f.Start));
    }

    // More firings first, then earlier ones.
    private static long Weight(int start) => 10_000 - start;

    private static bool Alike(Problem problem, int one, int other)
    {
        var (a, b) = (problem.Kilns[one], problem.Kilns[other]);
        if (problem.Pins.Any(p => p.Kiln == one || p.Kiln == other)
            || problem.Announced.Any(p => p.Kiln == one || p.Kiln == other)) return false;
        return a.Room == b.Room && a.Loading == b.Loading && a.Starts.SequenceEqual(b.Starts) && a.Slots.SequenceEqual(b.Slots)
            && a.Types.Count == b.Types.Count && a.Ends.Count == b.Ends.Count
            && a.Ends.Zip(b.Ends).All(e => e.First.SequenceEqual(e.Second))
            && a.Types.Zip(b.Types).All(t => t.First.Menu == t.Second.Menu && t.First.Cost == t.Second.Cost
            && t.First.Programme == t.Second.Programme && t.First.Takes.SequenceEqual(t.Second.Takes));
    }
}
