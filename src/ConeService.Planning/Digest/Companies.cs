namespace ConeService.Planning.Digest;

/// <summary>The largest sets of ware that may go together.</summary>
internal static class Companies
{
    /// <summary>The most sets that one firing is split into; more are never found in a studio, and the largest come first.</summary>
    public const int Most = 12;

    /// <summary>The largest sets (Bron–Kerbosch with a pivot), each as places, the largest first.</summary>
    /// <param name="count">How many wares there are.</param>
    /// <param name="mayShare">Whether two of them may go together.</param>
    /// <param name="weight">How much a ware counts when the largest set is looked for; null: one each.</param>
    public static IReadOnlyList<IReadOnlyList<int>> Of(int count, Func<int, int, bool> mayShare, Func<int, int>? weight = null)
    {
        var apart = new bool[count, count];
        var any = new bool[count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (mayShare(i, j)) continue;
                (apart[i, j], apart[j, i], any[i], any[j]) = (true, true, true, true);
            }
        }

        var free = Enumerable.Range(0, count).Where(i => !any[i]).ToList();
        var sets = new List<IReadOnlyList<int>>();
        Grow([], [.. Enumerable.Range(0, count).Where(i => any[i])], []);
        return [.. sets.OrderByDescending(s => weight is null ? s.Count : s.Sum(weight)).Take(Most)];

        void Grow(List<int> chosen, List<int> possible, List<int> done)
        {
            if (sets.Count >= 4 * Most) return;
            if (possible.Count == 0)
            {
                if (done.Count == 0) sets.Add([.. free.Concat(chosen).Order()]);
                return;
            }

            var pivot = possible.Concat(done).MinBy(p => possible.Count(q => q == p || apart[p, q]));
            foreach (var next in possible.Where(p => p == pivot || apart[pivot, p]).ToList())
            {
                Grow([.. chosen, next], [.. possible.Where(p => p != next && !apart[next, p])], [.. done.Where(p => !apart[next, p])]);
                possible.Remove(next);
                done.Add(next);
            }
        }
    }
}
