using ConeService.Firing.Room;
using ConeService.Planning.Model;

namespace ConeService.Planning.FirstPlan;

/// <summary>A former plan as far as it still holds: its pieces where they were, and room left filled up with what waits.</summary>
internal static class FormerPlan
{
    /// <summary>Holds the firings of a former plan.</summary>
    public static Draft Hold(Problem problem, IEnumerable<(Booking Booking, Announced Told)> former)
    {
        var loading = new Loading(problem);
        var all = former.Select(f => (f.Booking, f.Told.Contents, Pin: (Pin?)null))
            .Concat(problem.Pins.Select(p => (Booking: new Booking(p.Kiln, p.Start, p.Type), p.Contents, Pin: (Pin?)p)))
            .OrderBy(e => problem.Kilns[e.Booking.Kiln].LoadAt(e.Booking.Start)).ThenBy(e => e.Booking.Kiln).ToList();
        // What was told of later firings is not taken by earlier ones.
        var told = new int[problem.Stages.Count];
        foreach (var (stage, count) in all.Where(e => e.Pin is null).SelectMany(e => e.Contents)) told[stage] += count;
        var firings = new List<DraftFiring>();
        foreach (var (booking, contents, pin) in all)
        {
            if (pin is not null) loading.Release(pin);
            else
            {
                foreach (var (stage, count) in contents) told[stage] -= count;
            }

            var (model, kiln) = (problem.Kilns[booking.Kiln], booking.Kiln);
            var held = pin is not null ? contents : Held(problem, loading, booking, contents);
            if (pin is not { Closed: true })
            {
                var spare = loading.Fill(kiln, booking.Start, booking.Type, held, s =>
                    Math.Max(0, told[s]) + (held.FirstOrDefault(h => h.Stage == s).Count) is var kept
                    && loading.Waiting(s, model.LoadAt(booking.Start)) > kept ? ((long)(8191 - model.Slots[s].Height) << 20) + s : -1);
                held = Trim(held, spare.Contents, s => loading.Waiting(s, model.LoadAt(booking.Start)) - Math.Max(0, told[s]));
                if (pin is null && (held.Count == 0 || !Fires(problem, model, held))) continue;
            }

            var firing = new DraftFiring(kiln, booking.Start, booking.Type, pin is not null, held);
            loading.Take(firing);
            firings.Add(firing);
        }

        return new(firings, Scorer.Of(problem, firings));
    }

    // No more of anything than is left when what was told of is kept for it.
    private static List<StageCount> Trim(IReadOnlyList<StageCount> held, IReadOnlyList<StageCount> filled, Func<int, int> spare)
    {
        var trimmed = new List<StageCount>();
        foreach (var (stage, count) in filled)
        {
            var before = held.FirstOrDefault(h => h.Stage == stage).Count;
            var now = Math.Max(before, Math.Min(count, spare(stage)));
            if (now > 0) trimmed.Add(new(stage, now));
        }

        return trimmed;
    }

    private static List<StageCount> Held(Problem problem, Loading loading, Booking booking, IReadOnlyList<StageCount> contents)
    {
        var model = problem.Kilns[booking.Kiln];
        var packing = new Packing(model.Room);
        var held = new List<StageCount>();
        foreach (var (stage, count) in contents.Where(c => model.Types[booking.Type].Takes[c.Stage]))
        {
            var most = packing.MostOf(model.Slots[stage], Math.Min(count, loading.Waiting(stage, model.LoadAt(booking.Start))));
            if (most == 0) continue;
            packing.Add(model.Slots[stage], most);
            held.Add(new(stage, most));
        }

        return held;
    }

    private static bool Fires(Problem problem, KilnModel model, IReadOnlyList<StageCount> held)
    {
        if (held.Any(h => problem.ItemOf(h.Stage).DueBinds)) return true;
        var packing = new Packing(model.Room);
        foreach (var (stage, count) in held) packing.Add(model.Slots[stage], count);
        return packing.Fill >= problem.MinimumFill;
    }
}
