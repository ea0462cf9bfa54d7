namespace ConeService.Bench.Packing;

/// <summary>A piece with its height, mm, the clearance above it in it.</summary>
internal sealed record Piece(string Sort, decimal Height, decimal Width, decimal? Depth);

/// <summary>Sets a load onto layers of shelves by geometry: tall first, each piece onto the first layer that takes it; tried in many
/// orders and by several rules.</summary>
/// <param name="board">A layer, with the gap.</param>
/// <param name="height">Height for ware and shelves, mm.</param>
/// <param name="shelf">Thickness of a shelf, mm.</param>
/// <param name="layers">Layers that there are.</param>
/// <param name="above">Free above a piece, mm.</param>
/// <param name="apart">Free between pieces, mm.</param>
internal sealed class LoadPacker(Board board, double height, double shelf, int layers, double above, double apart)
{
    private readonly Random random = new(20261127);

    /// <summary>Whether a load is found to go in.</summary>
    /// <param name="pieces">The load.</param>
    /// <param name="tries">How often it is tried.</param>
    public bool GoesIn(IReadOnlyList<Piece> pieces, int tries)
    {
        for (var n = 0; n < tries; n++)
        {
            if (Try(pieces, n % 4, n < 4 ? 0 : 0.05 * (n / 4))) return true;
        }

        return false;
    }

    /// <summary>Whether pieces are found to go onto one shelf, however high they are.</summary>
    public bool GoOnOne(IReadOnlyList<Piece> pieces, int tries)
    {
        for (var n = 0; n < tries; n++)
        {
            var layer = new LayerPacker(board, n % 4);
            var jitter = n < 4 ? 0 : 0.05 * (n / 4);
            if (pieces.OrderByDescending(p => Foot(p).Area * Jitter(jitter)).All(p => layer.Add(Foot(p)))) return Checked([layer]);
        }

        return false;
    }

    private bool Try(IReadOnlyList<Piece> pieces, int rule, double jitter)
    {
        var open = new List<(double Height, LayerPacker Layer)>();
        double used = 0;
        var order = pieces.Select(p => (Piece: p, Key: ((double)p.Height * Jitter(jitter)) + (Foot(p).Area * 1e-5)))
            .OrderByDescending(p => p.Key).Select(p => p.Piece).ToList();
        foreach (var piece in order)
        {
            var needs = (double)piece.Height + above;
            if (open.Exists(l => l.Height >= needs && l.Layer.Add(Foot(piece)))) continue;
            used += needs + shelf;
            if (used > height + 1e-9 || open.Count == layers) return false;
            var layer = new LayerPacker(board, rule);
            if (!layer.Add(Foot(piece))) return false;
            open.Add((needs, layer));
        }

        return Checked([.. open.Select(o => o.Layer)]);
    }

    private Foot Foot(Piece p) => new(p.Depth is null, (double)p.Width + apart, (double)(p.Depth ?? p.Width) + apart);

    private double Jitter(double by) => 1 + (by * ((2 * random.NextDouble()) - 1));

    // Once more and by itself: nothing overlaps, nothing stands over the edge.
    private bool Checked(IReadOnlyList<LayerPacker> packed)
    {
        foreach (var layer in packed)
        {
            for (var i = 0; i < layer.Placed.Count; i++)
            {
                if (!board.Holds(layer.Placed[i])) throw new InvalidOperationException("A piece stands over the edge.");
                for (var j = 0; j < i; j++)
                {
                    if (!Board.Apart(layer.Placed[i], layer.Placed[j])) throw new InvalidOperationException("Two pieces overlap.");
                }
            }
        }

        return true;
    }
}
