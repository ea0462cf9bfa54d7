using ConeService.Firing;
using ConeService.Planning.Model;

namespace ConeService.Planning.Bounds;

/// <summary>
/// When a piece that has the studio to itself is unloaded at the earliest, for questions too large to list what each firing could hold:
/// every start counts, taken by a pin or not, ever full or not. So it is never later than what <see cref="Chances"/> tells, and a bound
/// by it is never above theirs. Stages that the same firings take share one list.
/// </summary>
internal sealed class EarliestUnloading
{
    private readonly (int[] Loads, int[] Ends)[] lists;
    private readonly int[] listOf;

    /// <summary>Lists the starts.</summary>
    public EarliestUnloading(Problem problem)
    {
        var types = problem.Kilns.SelectMany(k => Enumerable.Range(0, k.Types.Count).Select(t => (Kiln: k, Type: t))).ToList();
        var found = new Dictionary<string, int>(StringComparer.Ordinal);
        var made = new List<(int[], int[])>();
        listOf = new int[problem.Stages.Count];
        var takes = new char[types.Count];
        for (var stage = 0; stage < listOf.Length; stage++)
        {
            Patience.Check();
            for (var i = 0; i < takes.Length; i++)
                takes[i] = types[i].Kiln.Types[types[i].Type].Takes[stage] && types[i].Kiln.Slots[stage].Share > 0 ? '1' : '0';
            var key = new string(takes);
            if (!found.TryGetValue(key, out var list))
            {
                found[key] = list = made.Count;
                made.Add(Of(types.Where((_, i) => key[i] == '1')));
            }

            listOf[stage] = list;
        }

        lists = [.. made];
    }

    /// <summary>When a stage that is there from a moment on is unloaded at the earliest, min; int.MaxValue: never.</summary>
    public int Of(int stage, int ready)
    {
        var (loads, ends) = lists[listOf[stage]];
        var at = Array.BinarySearch(loads, ready);
        if (at < 0) at = ~at;
        // Of those that are loaded at the same moment the first has the earliest end of all that follow.
        while (at > 0 && loads[at - 1] == ready) at--;
        return at < ends.Length ? ends[at] : int.MaxValue;
    }

    // By loading, each with the earliest end of it and all later ones.
    private static (int[] Loads, int[] Ends) Of(IEnumerable<(KilnModel Kiln, int Type)> types)
    {
        var starts = types.SelectMany(t => Enumerable.Range(0, t.Kiln.Starts.Count)
            .Select(i => (Load: t.Kiln.LoadAt(i), End: t.Kiln.EndOf(i, t.Type)))).Where(s => s.End >= 0).OrderBy(s => s.Load).ToList();
        var ends = starts.Select(s => s.End).ToArray();
        for (var i = ends.Length - 2; i >= 0; i--) ends[i] = Math.Min(ends[i], ends[i + 1]);
        return ([.. starts.Select(s => s.Load)], ends);
    }
}
