using ConeService.Firing;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Model;

namespace ConeService.Planning.Search;

/// <summary>Simulated annealing over calendars. With a seed and a number of steps it gives the same plan again.</summary>
internal sealed class CalendarSearch
{
    private const int OthersAsked = 256;
    private readonly Problem problem;
    private readonly CalendarFiller filler;
    private readonly Random random;
    private readonly long dear;
    private readonly List<(int Kiln, int Start, int Type)> possible = [];

    /// <summary>Makes a search.</summary>
    public CalendarSearch(Problem problem, int seed)
    {
        this.problem = problem;
        filler = new(problem);
        random = new(seed);
        foreach (var kiln in problem.Kilns)
        {
            for (var i = 0; i < kiln.Starts.Count; i++)
            {
                for (var t = 0; t < kiln.Types.Count; t++)
                {
                    if (kiln.EndOf(i, t) >= 0 && !FirstPlanner.Overlaps(problem, new(kiln.Index, i, t), [])
                        && kiln.Types[t].Takes.Contains(true))
                        possible.Add((kiln.Index, i, t));
                }
            }
        }

        dear = Math.Max(1, problem.Kilns.SelectMany(k => k.Types).Select(t => t.Cost).DefaultIfEmpty().Max());
    }

    /// <summary>Calendars tried so far.</summary>
    public long Steps { get; private set; }

    /// <summary>Calendars beyond which a question of this size is hardly ever bettered.</summary>
    public long WorthTrying => 2000 + (200L * possible.Count);

    /// <summary>Searches from a plan on.</summary>
    /// <param name="from">The plan.</param>
    /// <param name="progress">From 0 to 1: how much of the time or of the steps is gone; at 1 it ends.</param>
    /// <param name="isEnough">Whether a plan needs no bettering.</param>
    /// <param name="elsewhere">The best plan that others found, asked for now and then.</param>
    public Draft Search(Draft from, Func<long, double> progress, Func<Draft, bool>? isEnough = null, Func<Draft>? elsewhere = null)
    {
        var best = from;
        if (possible.Count == 0) return best;
        var (now, calendar) = (from, FirstPlanner.Calendar(from).ToList());
        for (double gone; (gone = progress(Steps)) < 1; Steps++)
        {
            Patience.Check();
            if (elsewhere is not null && Steps % OthersAsked == 0 && FirstPlanner.Better(best, elsewhere()) is var other && other != best)
                (best, now, calendar) = (other, other, [.. FirstPlanner.Calendar(other)]);
            var next = new List<Booking>(calendar);
            for (var moves = 1 + random.Next(2); moves > 0; moves--) Move(next);
            var tried = filler.Fill(next);
            var worse = Energy(tried.Score) - Energy(now.Score);
            var heat = dear * 0.5 * Math.Pow(0.01, gone);
            if (worse > 0 && random.NextDouble() >= Math.Exp(-worse / heat)) continue;
            (now, calendar) = (tried, [.. FirstPlanner.Calendar(tried)]);
            if (ReferenceEquals(FirstPlanner.Better(best, tried), best)) continue;
            best = tried;
            if (isEnough?.Invoke(best) == true) break;
        }

        return best;
    }

    // Softer than the order of the score, or the search would never leave a valley: a firing of a piece left undone as dear as a dear
    // firing, and a piece late as two.
    private double Energy(Score score) =>
        (score.Late * 2.0 * dear / Problem.LatePiece) + (score.Undone * 1.2 * dear) + score.Weighed + (score.Waiting * 1e-4);

    private void Move(List<Booking> calendar)
    {
        switch (calendar.Count == 0 ? 0 : random.Next(8))
        {
            case 0 or 1:
                Put(calendar, possible[random.Next(possible.Count)]);
                break;
            case 2:
                calendar.RemoveAt(random.Next(calendar.Count));
                break;
            case 3:
                var changed = calendar[random.Next(calendar.Count)];
                Put(calendar, (changed.Kiln, changed.Start, random.Next(problem.Kilns[changed.Kiln].Types.Count)));
                break;
            case 4 or 5:
                Shift(calendar);
                break;
            case 6:
                Swap(calendar);
                break;
            default:
                Elsewhere(calendar);
                break;
        }
    }

    private void Shift(List<Booking> calendar)
    {
        var moved = calendar[random.Next(calendar.Count)];
        var start = moved.Start + ((1 + random.Next(3)) * (random.Next(2) == 0 ? 1 : -1));
        if (start < 0 || start >= problem.Kilns[moved.Kiln].Starts.Count) return;
        calendar.Remove(moved);
        Put(calendar, (moved.Kiln, start, moved.Type));
    }

    private void Swap(List<Booking> calendar)
    {
        var one = calendar[random.Next(calendar.Count)];
        var other = calendar[random.Next(calendar.Count)];
        if (one.Kiln != other.Kiln || one.Type == other.Type) return;
        Put(calendar, (one.Kiln, one.Start, other.Type));
        Put(calendar, (other.Kiln, other.Start, one.Type));
    }

    private void Elsewhere(List<Booking> calendar)
    {
        calendar.RemoveAt(random.Next(calendar.Count));
        Put(calendar, possible[random.Next(possible.Count)]);
    }

    // What is in the way gives way; pins never do.
    private void Put(List<Booking> calendar, (int Kiln, int Start, int Type) at)
    {
        var kiln = problem.Kilns[at.Kiln];
        var (from, to) = (kiln.LoadAt(at.Start), kiln.EndOf(at.Start, at.Type));
        var booking = new Booking(at.Kiln, at.Start, at.Type);
        if (to < 0 || FirstPlanner.Overlaps(problem, booking, [])) return;
        calendar.RemoveAll(b => b.Kiln == at.Kiln && kiln.LoadAt(b.Start) < to && from < kiln.EndOf(b.Start, b.Type));
        calendar.Add(booking);
    }
}
