using ConeService.Planning.Model;

namespace ConeService.Planning.Tests.Oracle;

/// <summary>Small questions drawn at random: up to 6 pieces, one or two kilns, company, dates, too little room, sometimes a firing that
/// stands.</summary>
internal static class DrawnProblems
{
    /// <summary>A question; the same number gives the same.</summary>
    public static Problem Of(int number)
    {
        var random = new Random(number);
        var horizon = random.Next(3, 7) * 2 * Problem.Day;
        var (items, stages, sorts) = Items(random, horizon);
        var kilns = Enumerable.Range(0, random.Next(1, 3)).Select(k => Kiln(random, k, horizon, stages, sorts)).ToList();
        if (kilns.Count == 2 && random.Next(3) == 0) kilns[1] = Twin(kilns[0]);
        var problem = new Problem
        {
            Horizon = horizon,
            Kilns = kilns,
            Items = items,
            Stages = stages,
            MinimumFill = random.Next(4) * 2000,
        };
        return random.Next(4) == 0 ? WithPin(problem, random) : problem;
    }

    private static (List<Item> Items, List<Stage> Stages, List<Sort> Sorts) Items(Random random, int horizon)
    {
        var (items, stages, sorts) = (new List<Item>(), new List<Stage>(), new List<Sort>());
        for (var pieces = random.Next(2, 7); pieces > 0;)
        {
            var count = random.Next(1, Math.Min(pieces, 3) + 1);
            pieces -= count;
            var (length, from) = (random.Next(1, 3), 0);
            if (length == 1) from = random.Next(2);
            int? due = random.Next(2) == 0 ? random.Next(horizon / 4, horizon + (3 * Problem.Day)) : null;
            var binds = due < horizon + Problem.Day;
            var priority = random.Next(1, 4);
            var undone = binds ? priority * (1000 + ((horizon + (4 * Problem.Day) - due!.Value) / Problem.Day) + 1) : 0;
            items.Add(new(
                items.Count, count, random.Next(3) == 0 ? random.Next(horizon / 2) : -100, due, priority, random.Next(1, 4) * 720,
                stages.Count, length, binds, undone));
            var (height, share, company) = (random.Next(60, 260), random.Next(1500, 7000), random.Next(3));
            // Of four pieces one is thick, and fired slowly as long as it is raw.
            var thick = random.Next(4) == 0;
            for (var n = 0; n < length; n++)
            {
                stages.Add(new(stages.Count, items.Count - 1, n, n == length - 1));
                sorts.Add(new(from + n, height, share, company, thick));
            }
        }

        return (items, stages, sorts);
    }

    private static KilnModel Kiln(Random random, int index, int horizon, List<Stage> stages, List<Sort> sorts)
    {
        var room = new KilnRoom(random.Next(280, 520), 20, random.Next(1, 4));
        var starts = Enumerable.Range(0, random.Next(2, 5)).Select(_ => random.Next(horizon)).Distinct().Order().ToList();
        var scale = 0.6 + random.NextDouble();
        var hours = new List<int> { random.Next(900, 2200), random.Next(900, 2200) };
        hours.Add(hours[0] + random.Next(200, 1600));
        // The quick bisque takes what is thin, the slow one all; of glazes company 0 and 1 do not share, 2 goes with both.
        var bisque = random.Next(20, 60) * 10;
        var types = new List<FiringType>
        {
            new(0, [.. sorts.Select(s => s is { Menu: 0, Thick: false })], bisque, 0),
            new(0, [.. sorts.Select(s => s.Menu == 0)], bisque + (random.Next(10) * 10), 2),
        };
        var glaze = random.Next(30, 90) * 10;
        foreach (var apart in new[] { 0, 1 }) types.Add(new(1, [.. sorts.Select(s => s.Menu == 1 && s.Company != apart)], glaze, 1));
        return new()
        {
            Index = index,
            Room = room,
            Starts = starts,
            Loading = 60,
            Types = types,
            Ends = [.. hours.Select(h => starts.Select(s => random.Next(12) == 0 ? -1 : s + h).ToArray())],
            Slots = [.. stages.Select((_, s) => sorts[s].Height + 20 > room.Height ? default : new Slot(
                sorts[s].Height, Math.Min(Problem.Whole, (int)(sorts[s].Share * scale)), random.Next(500_000, 2_500_000)))],
        };
    }

    // No slot, no firing: the digest sees to that.
    private static KilnModel Twin(KilnModel kiln) => new()
    {
        Index = 1,
        Room = kiln.Room,
        Starts = kiln.Starts,
        Loading = kiln.Loading,
        Types = kiln.Types,
        Ends = kiln.Ends,
        Slots = kiln.Slots,
    };

    private static Problem WithPin(Problem problem, Random random)
    {
        var kiln = problem.Kilns[0];
        for (var i = 0; i < kiln.Starts.Count; i++)
        {
            for (var t = 0; t < kiln.Types.Count; t++)
            {
                if (kiln.EndOf(i, t) < 0) continue;
                foreach (var item in problem.Items)
                {
                    if (item.Ready > kiln.LoadAt(i) || !kiln.Types[t].Takes[item.FirstStage]
                        || kiln.Slots[item.FirstStage].Share == 0) continue;
                    return new()
                    {
                        Horizon = problem.Horizon,
                        Kilns = problem.Kilns,
                        Items = problem.Items,
                        Stages = problem.Stages,
                        MinimumFill = problem.MinimumFill,
                        Pins = [new(0, i, t, random.Next(2) == 0, [new(item.FirstStage, 1)])],
                    };
                }
            }
        }

        return problem;
    }

    private sealed record Sort(int Menu, int Height, int Share, int Company, bool Thick);
}
