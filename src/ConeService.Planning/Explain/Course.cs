using ConeService.Planning.Digest;
using ConeService.Planning.Model;

namespace ConeService.Planning.Explain;

/// <summary>Which single piece of those alike is in which firing: whoever was ready first is loaded first.</summary>
internal sealed class Course
{
    /// <summary>Follows the pieces through a plan.</summary>
    public Course(Digested digested, Draft plan)
    {
        var problem = digested.Problem;
        var byItem = problem.Items.Select(_ => new List<Single>()).ToList();
        for (var p = 0; p < digested.Pieces.Count; p++)
        {
            if (digested.Pieces[p].Item is not { } item) continue;
            for (var n = 0; n < digested.Pieces[p].Count; n++) byItem[item].Add(new(p, problem.Items[item].Ready));
        }

        for (var f = 0; f < plan.Firings.Count; f++)
        {
            var firing = plan.Firings[f];
            var kiln = problem.Kilns[firing.Kiln];
            var (load, end) = (kiln.LoadAt(firing.Start), kiln.EndOf(firing.Start, firing.Type));
            foreach (var (stage, count) in firing.Contents)
            {
                var (number, item) = (problem.Stages[stage].Number, problem.ItemOf(stage));
                // A firing that stands may hold what could not be ready for it.
                var chosen = byItem[item.Index].Select((s, i) => (s, i)).Where(x => x.s.Next <= number)
                    .OrderBy(x => x.s.Next == number && x.s.Available <= load ? 0 : 1).ThenBy(x => Math.Abs(x.s.Next - number))
                    .ThenBy(x => x.s.Available).ThenBy(x => x.i).Take(count).Select(x => x.s).ToList();
                foreach (var single in chosen) single.Fire(new(f, number, single.Available, load, end), end + item.Handling);
            }
        }

        Singles = byItem;
    }

    /// <summary>The pieces of each item, one by one.</summary>
    public IReadOnlyList<IReadOnlyList<Single>> Singles { get; }
}

/// <summary>One piece.</summary>
/// <param name="piece">Its place among the pieces of the request.</param>
/// <param name="ready">From when it can be loaded, min.</param>
internal sealed class Single(int piece, int ready)
{
    private readonly List<Stay> stays = [];

    /// <summary>Its place among the pieces of the request.</summary>
    public int Piece { get; } = piece;

    /// <summary>From when it can be loaded for its next firing, min.</summary>
    public int Available { get; private set; } = ready;

    /// <summary>Place of its next firing, from 0.</summary>
    public int Next { get; private set; }

    /// <summary>Its firings.</summary>
    public IReadOnlyList<Stay> Stays => stays;

    /// <summary>Puts it into a firing.</summary>
    public void Fire(Stay stay, int available)
    {
        stays.Add(stay);
        (Next, Available) = (stay.Number + 1, available);
    }
}

/// <summary>A firing of a piece.</summary>
/// <param name="Firing">Place of the firing in the plan.</param>
/// <param name="Number">Which of the piece's firings it is, from 0.</param>
/// <param name="From">From when it could be loaded, min.</param>
/// <param name="Load">When it is loaded, min.</param>
/// <param name="End">When it is unloaded, min.</param>
internal readonly record struct Stay(int Firing, int Number, int From, int Load, int End);
