namespace ConeService.Bench.Packing;

/// <summary>Ware of studios, drawn. The sizes are invented; they run from cups to what fills a shelf.</summary>
internal static class Wares
{
    private static readonly Piece[] Sorts =
    [
        new("cup", 95, 80, null), new("mug", 100, 120, 90), new("beaker", 120, 75, null), new("saucer", 25, 150, null),
        new("small bowl", 60, 120, null), new("bowl", 75, 160, null), new("serving bowl", 110, 270, null), new("side plate", 28, 190, null),
        new("plate", 32, 270, null), new("platter", 45, 330, null), new("tray", 40, 300, 200), new("tile", 14, 150, 150),
        new("jug", 210, 150, 120), new("teapot", 150, 230, 150), new("casserole", 160, 250, null), new("vase", 250, 120, null),
        new("tall vase", 340, 160, null), new("planter", 220, 240, null), new("lidded jar", 190, 140, null), new("box", 90, 140, 100),
    ];

    /// <summary>A backlog of so many pieces: three to eight sorts, in shares of their own, each piece a little larger or smaller.</summary>
    public static List<Piece> Mixed(Random random, int count)
    {
        var chosen = Sorts.OrderBy(_ => random.NextDouble()).Take(3 + random.Next(6))
            .Select(s => (Sort: s, Weight: 0.2 + random.NextDouble())).ToList();
        return [.. Enumerable.Range(0, count).Select(_ => Vary(random, Draw(random, chosen)))];
    }

    /// <summary>A backlog of one sort.</summary>
    public static List<Piece> Alike(Random random, int count)
    {
        var one = Vary(random, Sorts[random.Next(Sorts.Length)]);
        return [.. Enumerable.Repeat(one, count)];
    }

    private static Piece Draw(Random random, List<(Piece Sort, double Weight)> sorts)
    {
        var at = random.NextDouble() * sorts.Sum(s => s.Weight);
        foreach (var (sort, weight) in sorts)
        {
            at -= weight;
            if (at <= 0) return sort;
        }

        return sorts[^1].Sort;
    }

    // Thrown ware of one sort differs by some millimetres.
    private static Piece Vary(Random random, Piece sort)
    {
        var by = (decimal)(0.9 + (0.2 * random.NextDouble()));
        return sort with
        {
            Height = Math.Round(sort.Height * by), Width = Math.Round(sort.Width * by), Depth = sort.Depth is { } depth
                ? Math.Round(depth * by) : null,
        };
    }
}
