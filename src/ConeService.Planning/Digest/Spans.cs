namespace ConeService.Planning.Digest;

/// <summary>Times on a line of minutes, apart and in order.</summary>
internal sealed class Spans
{
    private readonly List<(int From, int To)> spans = [];

    /// <summary>Joins times in any order.</summary>
    public Spans(IEnumerable<(int From, int To)> sent)
    {
        foreach (var (from, to) in sent.Where(s => s.To > s.From).Order())
        {
            if (spans.Count > 0 && from <= spans[^1].To) spans[^1] = (spans[^1].From, Math.Max(to, spans[^1].To));
            else spans.Add((from, to));
        }
    }

    /// <summary>The times.</summary>
    public IReadOnlyList<(int From, int To)> All => spans;

    /// <summary>Whether any of them has a minute in common with a time.</summary>
    public bool Overlap(int from, int to) => spans.Exists(s => s.From < to && from < s.To);

    /// <summary>What of a time lies in none of them.</summary>
    public IReadOnlyList<(int From, int To)> Without(int from, int to)
    {
        var left = new List<(int, int)>();
        foreach (var span in spans.Where(s => s.From < to && from < s.To))
        {
            if (span.From > from) left.Add((from, span.From));
            from = span.To;
        }

        if (from < to) left.Add((from, to));
        return left;
    }

    /// <summary>The first moment in one of them, not before another; null when there is none.</summary>
    public int? NextWithin(int from)
    {
        foreach (var span in spans)
        {
            if (span.To > from) return Math.Max(from, span.From);
        }

        return null;
    }
}
