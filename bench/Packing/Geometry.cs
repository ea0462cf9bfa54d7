namespace ConeService.Bench.Packing;

/// <summary>A piece as it stands on a shelf, seen from above, mm: a disc, or a rectangle along the shelf. The gap that it keeps to
/// others is part of it.</summary>
/// <param name="IsDisc">True for a disc.</param>
/// <param name="Width">Width, or diameter.</param>
/// <param name="Depth">Depth, or diameter.</param>
internal readonly record struct Foot(bool IsDisc, double Width, double Depth)
{
    public double Radius => Width / 2;

    public double Area => Width * Depth * (IsDisc ? Math.PI / 4 : 1);

    public Foot Turned => new(IsDisc, Depth, Width);
}

/// <summary>A piece at a place: its middle, mm from the middle of the shelf.</summary>
internal readonly record struct Placed(Foot Foot, double X, double Y);

/// <summary>A shelf, larger by the gap than it is, since no gap is needed at its edge.</summary>
/// <param name="IsRound">True for a disc.</param>
/// <param name="Width">Width, or diameter, mm.</param>
/// <param name="Depth">Depth, or diameter, mm.</param>
internal readonly record struct Board(bool IsRound, double Width, double Depth)
{
    private const double Slack = 1e-6;

    /// <summary>Whether a piece lies within it.</summary>
    public bool Holds(Placed p)
    {
        var (x, y) = (Math.Abs(p.X), Math.Abs(p.Y));
        if (!IsRound) return x + (p.Foot.Width / 2) <= (Width / 2) + Slack && y + (p.Foot.Depth / 2) <= (Depth / 2) + Slack;
        return p.Foot.IsDisc
            ? Math.Sqrt((x * x) + (y * y)) + p.Foot.Radius <= (Width / 2) + Slack
            : Length(x + (p.Foot.Width / 2), y + (p.Foot.Depth / 2)) <= (Width / 2) + Slack;
    }

    /// <summary>Whether two pieces are apart.</summary>
    public static bool Apart(Placed a, Placed b)
    {
        var (x, y) = (Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));
        if (a.Foot.IsDisc && b.Foot.IsDisc) return (x * x) + (y * y) >= Square(a.Foot.Radius + b.Foot.Radius - Slack);
        if (!a.Foot.IsDisc && !b.Foot.IsDisc)
            return x >= ((a.Foot.Width + b.Foot.Width) / 2) - Slack || y >= ((a.Foot.Depth + b.Foot.Depth) / 2) - Slack;
        var (disc, box) = a.Foot.IsDisc ? (a, b) : (b, a);
        return Length(Math.Max(0, x - (box.Foot.Width / 2)), Math.Max(0, y - (box.Foot.Depth / 2))) >= disc.Foot.Radius - Slack;
    }

    private static double Length(double x, double y) => Math.Sqrt((x * x) + (y * y));

    private static double Square(double x) => x * x;
}
