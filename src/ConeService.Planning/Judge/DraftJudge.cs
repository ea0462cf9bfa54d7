using ConeService.Planning.Model;

namespace ConeService.Planning.Judge;

/// <summary>Judges a plan in whole numbers by the rules themselves: knows neither search nor solver, and counts the room its own
/// way.</summary>
internal static class DraftJudge
{
    /// <summary>What is wrong with a plan; empty when nothing is.</summary>
    public static IReadOnlyList<string> Faults(Problem problem, Draft plan)
    {
        var faults = new List<string>();
        for (var i = 0; i < plan.Firings.Count; i++)
        {
            var (firing, kiln) = (plan.Firings[i], problem.Kilns[plan.Firings[i].Kiln]);
            var (from, to) = (kiln.LoadAt(firing.Start), kiln.EndOf(firing.Start, firing.Type));
            if (to < 0) faults.Add($"firing {i} can't be started then");
            for (var j = 0; j < i; j++)
            {
                var other = plan.Firings[j];
                if (other.Kiln == firing.Kiln && kiln.LoadAt(other.Start) < to && from < kiln.EndOf(other.Start, other.Type))
                    faults.Add($"firings {j} and {i} overlap");
            }

            if (firing.Contents.Select(c => c.Stage).Distinct()
                .Count() != firing.Contents.Count) faults.Add($"firing {i} names a stage twice");
            if (firing.Contents.Any(c => c.Count <= 0)) faults.Add($"firing {i} holds nothing of a stage");
            if (firing.IsPinned) continue;
            if (firing.Contents.Count == 0) faults.Add($"firing {i} is empty");
            if (firing.Contents.Any(c => !kiln.Types[firing.Type].Takes[c.Stage])) faults.Add($"firing {i} holds what it does not take");
            if (!HasRoom(kiln, firing.Contents)) faults.Add($"firing {i} is overfull");
            if (!firing.Contents.Any(c => problem.ItemOf(c.Stage).DueBinds) && FillOf(kiln, firing.Contents) < problem.MinimumFill)
                faults.Add($"firing {i} is too empty");
        }

        foreach (var pin in problem.Pins)
        {
            if (!plan.Firings.Any(f => f.IsPinned && f.Kiln == pin.Kiln && f.Start == pin.Start && f.Type == pin.Type
                && pin.Contents.All(p => f.Contents.Any(c => c.Stage == p.Stage && c.Count >= p.Count))
                && (!pin.Closed || f.Contents.Sum(c => c.Count) == pin.Contents.Sum(c => c.Count))))
            {
                faults.Add($"the pin of kiln {pin.Kiln} at start {pin.Start} is not kept");
            }
        }

        foreach (var stage in problem.Stages) Chain(problem, plan, stage, faults);
        if (plan.Score != Scorer.Of(problem, plan.Firings)) faults.Add("the score is another");
        return faults;
    }

    // At each loading no more may have been taken than was there.
    private static void Chain(Problem problem, Draft plan, Stage stage, List<string> faults)
    {
        var item = problem.Items[stage.Item];
        var all = plan.Firings.Sum(f => Of(f, stage.Index));
        if (all > item.Count) faults.Add($"stage {stage.Index} is fired {all} times for {item.Count}");
        foreach (var firing in plan.Firings.Where(f => !f.IsPinned && Of(f, stage.Index) > 0))
        {
            var load = problem.Kilns[firing.Kiln].LoadAt(firing.Start);
            var taken = plan.Firings.Where(f => problem.Kilns[f.Kiln].LoadAt(f.Start) <= load).Sum(f => Of(f, stage.Index));
            var there = stage.Number == 0
                ? item.Ready <= load ? item.Count : 0
                : plan.Firings.Where(f => problem.Kilns[f.Kiln].EndOf(f.Start, f.Type) + item.Handling <= load)
                .Sum(f => Of(f, stage.Index - 1));
            if (taken > there) faults.Add($"of stage {stage.Index} {taken} are taken at {load} and {there} are there");
        }
    }

    private static int Of(DraftFiring firing, int stage) => firing.Contents.Where(c => c.Stage == stage).Sum(c => c.Count);

    /// <summary>Whether pieces go in: for each height what stands at least so high, layer upon layer, as the rule is written.</summary>
    public static bool HasRoom(KilnModel kiln, IReadOnlyList<StageCount> contents)
    {
        var heights = contents.Select(c => kiln.Slots[c.Stage].Height).Distinct().OrderDescending().ToList();
        var layers = heights.ConvertAll(h => (int)Math.Ceiling(
            contents.Where(c => kiln.Slots[c.Stage].Height >= h).Sum(c => (decimal)kiln.Slots[c.Stage].Share * c.Count) / Problem.Whole));
        var used = 0;
        for (var i = 0; i < heights.Count; i++) used += (layers[i] - (i == 0 ? 0 : layers[i - 1])) * (heights[i] + kiln.Room.Shelf);
        return contents.All(c => kiln.Slots[c.Stage].Share > 0) && used <= kiln.Room.Height && layers.LastOrDefault() <= kiln.Room.Layers
            && contents.Sum(c => (decimal)kiln.Slots[c.Stage].Volume * c.Count) <= 10_000_000;
    }

    private static int FillOf(KilnModel kiln, IReadOnlyList<StageCount> contents)
    {
        var slots = contents.Select(c => (Slot: kiln.Slots[c.Stage], c.Count)).ToList();
        return (int)Math.Max(
            slots.Sum(s => (long)s.Slot.Share * s.Count * (s.Slot.Height + kiln.Room.Shelf)) / kiln.Room.Height,
            slots.Sum(s => (long)s.Slot.Share * s.Count) / kiln.Room.Layers);
    }
}
