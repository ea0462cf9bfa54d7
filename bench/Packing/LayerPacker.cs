namespace ConeService.Bench.Packing;

/// <summary>
/// Sets pieces onto one shelf: each where it touches two of what stands there already, edge included, and of those places the lowest, the
/// one nearest the edge, or the one nearest the middle. A heuristic: where it finds no place there may be one.
/// </summary>
internal sealed class LayerPacker(Board board, int rule)
{
    private readonly List<Placed> placed = [];

    public IReadOnlyList<Placed> Placed => placed;

    /// <summary>Sets a piece down, if a place is found.</summary>
    public bool Add(Foot foot)
    {
        Placed? best = null;
        var least = double.PositiveInfinity;
        foreach (var place in foot.IsDisc ? Discs(foot) : Boxes(foot).Concat(Boxes(foot.Turned)))
        {
            var worth = Worth(place);
            if (worth >= least || !board.Holds(place) || placed.Exists(p => !Board.Apart(p, place))) continue;
            (best, least) = (place, worth);
        }

        if (best is not { } found) return false;
        placed.Add(found);
        return true;
    }

    private double Worth(Placed p) => rule switch
    {
        0 => p.Y - (p.Foot.Depth / 2) + (1e-3 * p.X),
        1 => -((p.X * p.X) + (p.Y * p.Y)),
        2 => p.X + p.Y - ((p.Foot.Width + p.Foot.Depth) / 2),
        _ => Math.Abs(p.X) + (1e-3 * p.Y),
    };

    private IEnumerable<Placed> Discs(Foot foot)
    {
        var r = foot.Radius;
        var circles = new List<(double X, double Y, double R)>();
        var lines = new List<(bool IsX, double At)>();
        if (board.IsRound) circles.Add((0, 0, (board.Width / 2) - r));
        else lines.AddRange([(true, r - (board.Width / 2)), (true, (board.Width / 2) - r), (false, r - (board.Depth / 2)),
            (false, (board.Depth / 2) - r)]);
        foreach (var p in placed)
        {
            if (p.Foot.IsDisc)
            {
                circles.Add((p.X, p.Y, r + p.Foot.Radius));
                continue;
            }

            var (w, d) = (p.Foot.Width / 2, p.Foot.Depth / 2);
            lines.AddRange([(true, p.X - w - r), (true, p.X + w + r), (false, p.Y - d - r), (false, p.Y + d + r)]);
            circles.AddRange([(p.X - w, p.Y - d, r), (p.X - w, p.Y + d, r), (p.X + w, p.Y - d, r), (p.X + w, p.Y + d, r)]);
        }

        if (placed.Count == 0)
        {
            yield return board.IsRound ? new(foot, r - (board.Width / 2), 0) : new(foot, r - (board.Width / 2), r - (board.Depth / 2));
            yield return new(foot, 0, 0);
        }

        for (var i = 0; i < circles.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var (dx, dy, reach) = (circles[i].X - circles[j].X, circles[i].Y - circles[j].Y, circles[i].R + circles[j].R);
                if ((dx * dx) + (dy * dy) > reach * reach) continue;
                foreach (var (x, y) in Meet(circles[i], circles[j])) yield return new(foot, x, y);
            }

            foreach (var line in lines)
            {
                if (Math.Abs(line.At - (line.IsX ? circles[i].X : circles[i].Y)) > circles[i].R) continue;
                foreach (var (x, y) in Meet(circles[i], line)) yield return new(foot, x, y);
            }
        }

        foreach (var across in lines.Where(l => l.IsX))
        {
            foreach (var along in lines.Where(l => !l.IsX)) yield return new(foot, across.At, along.At);
        }
    }

    private IEnumerable<Placed> Boxes(Foot foot)
    {
        var (w, d, half) = (foot.Width / 2, foot.Depth / 2, board.Width / 2);
        var xs = new List<double> { 0 };
        var ys = new List<double> { 0 };
        if (board.IsRound)
        {
            // In a corner of the circle, and in the middle of its sides.
            var (side, up) = (Math.Sqrt(Math.Max(0, (half * half) - (d * d))) - w, Math.Sqrt(Math.Max(0, (half * half) - (w * w))) - d);
            xs.AddRange([side, -side]);
            ys.AddRange([up, -up]);
        }
        else
        {
            xs.AddRange([w - half, half - w]);
            ys.AddRange([d - (board.Depth / 2), (board.Depth / 2) - d]);
        }

        foreach (var p in placed)
        {
            xs.AddRange([p.X - (p.Foot.Width / 2) - w, p.X + (p.Foot.Width / 2) + w]);
            ys.AddRange([p.Y - (p.Foot.Depth / 2) - d, p.Y + (p.Foot.Depth / 2) + d]);
        }

        foreach (var x in xs)
        {
            foreach (var y in ys) yield return new(foot, x, y);
            if (!board.IsRound) continue;
            var edge = Math.Sqrt(Math.Max(0, (half * half) - ((Math.Abs(x) + w) * (Math.Abs(x) + w)))) - d;
            yield return new(foot, x, edge);
            yield return new(foot, x, -edge);
        }

        if (!board.IsRound) yield break;
        foreach (var y in ys)
        {
            var edge = Math.Sqrt(Math.Max(0, (half * half) - ((Math.Abs(y) + d) * (Math.Abs(y) + d)))) - w;
            yield return new(foot, edge, y);
            yield return new(foot, -edge, y);
        }
    }

    private static IEnumerable<(double X, double Y)> Meet((double X, double Y, double R) a, (double X, double Y, double R) b)
    {
        var (x, y) = (b.X - a.X, b.Y - a.Y);
        var apart = Math.Sqrt((x * x) + (y * y));
        if (apart < 1e-9 || apart > a.R + b.R || apart < Math.Abs(a.R - b.R)) yield break;
        var along = ((apart * apart) + (a.R * a.R) - (b.R * b.R)) / (2 * apart);
        var off = Math.Sqrt(Math.Max(0, (a.R * a.R) - (along * along)));
        var (mx, my) = (a.X + (x * along / apart), a.Y + (y * along / apart));
        yield return (mx - (y * off / apart), my + (x * off / apart));
        yield return (mx + (y * off / apart), my - (x * off / apart));
    }

    private static IEnumerable<(double X, double Y)> Meet((double X, double Y, double R) circle, (bool IsX, double At) line)
    {
        var away = line.At - (line.IsX ? circle.X : circle.Y);
        if (Math.Abs(away) > circle.R) yield break;
        var off = Math.Sqrt((circle.R * circle.R) - (away * away));
        foreach (var way in new[] { off, -off }) yield return line.IsX ? (line.At, circle.Y + way) : (circle.X + way, line.At);
    }
}
