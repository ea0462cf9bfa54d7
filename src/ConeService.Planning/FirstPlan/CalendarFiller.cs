using ConeService.Planning.Model;

namespace ConeService.Planning.FirstPlan;

/// <summary>A firing of a calendar, not loaded yet.</summary>
/// <param name="Kiln">The kiln.</param>
/// <param name="Start">Place among its starts.</param>
/// <param name="Type">What it is.</param>
internal readonly record struct Booking(int Kiln, int Start, int Type);

/// <summary>
/// Fills a calendar by a fixed rule: who would otherwise be late, then those with the fewest later chances, then the tallest, then the
/// widest. What would be too empty is not fired. Not for several threads.
/// </summary>
internal sealed class CalendarFiller(Problem problem)
{
    private const long Classes = 1L << 50;
    private readonly Loading loading = new(problem);
    private readonly int[] chances = new int[problem.Stages.Count];
    private readonly int[] inTime = new int[problem.Stages.Count];

    /// <summary>Fills bookings that do not overlap each other nor pins.</summary>
    public Draft Fill(IEnumerable<Booking> calendar)
    {
        var pins = problem.Pins.Select(p => (Booking: new Booking(p.Kiln, p.Start, p.Type), Pin: (Pin?)p));
        var all = calendar.Select(b => (Booking: b, Pin: (Pin?)null)).Concat(pins)
            .OrderBy(e => problem.Kilns[e.Booking.Kiln].LoadAt(e.Booking.Start)).ThenBy(e => e.Booking.Kiln).ToList();
        loading.Reset();
        Array.Clear(chances);
        Array.Clear(inTime);
        foreach (var (booking, _) in all) Count(booking, 1);
        var firings = new List<DraftFiring>(all.Count);
        foreach (var (booking, pin) in all)
        {
            Count(booking, -1);
            if (pin is not null) loading.Release(pin);
            var held = pin?.Contents;
            if (pin is not { Closed: true })
            {
                var kiln = problem.Kilns[booking.Kiln];
                var end = kiln.EndOf(booking.Start, booking.Type);
                var filled = loading.Fill(booking.Kiln, booking.Start, booking.Type, held, s => Rank(kiln, s, end));
                if (pin is null && (filled.Contents.Count == 0 || (filled.Fill < problem.MinimumFill && !filled.Dated))) continue;
                held = filled.Contents;
            }

            var firing = new DraftFiring(booking.Kiln, booking.Start, booking.Type, pin is not null, held!);
            loading.Take(firing);
            firings.Add(firing);
        }

        return new(firings, Scorer.Of(problem, firings));
    }

    private void Count(Booking booking, int by)
    {
        var end = problem.Kilns[booking.Kiln].EndOf(booking.Start, booking.Type);
        foreach (var stage in loading.TakenBy(booking.Kiln, booking.Type))
        {
            chances[stage] += by;
            if (end <= loading.LatestEnd(stage)) inTime[stage] += by;
        }
    }

    private long Rank(KilnModel kiln, int stage, int end)
    {
        var item = problem.ItemOf(stage);
        var latest = loading.LatestEnd(stage);
        var level = !item.DueBinds ? 2 : end > latest ? 1 : inTime[stage] == 0 ? 0 : 2;
        var slot = kiln.Slots[stage];
        return (level * Classes) + ((level < 2 ? 9 - item.Priority : 9) * (Classes >> 4))
            + ((long)Math.Min(chances[stage], 4095) << 28) + ((long)(8191 - Math.Min(8191, slot.Height)) << 14)
                + (Problem.Whole - slot.Share);
    }
}
