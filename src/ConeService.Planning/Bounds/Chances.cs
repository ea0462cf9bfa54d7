using ConeService.Planning.Model;
using ConeService.Planning.Search;

namespace ConeService.Planning.Bounds;

/// <summary>By stage when it can be loaded and unloaded. A firing that stands and may be filled up is open to all that it takes.</summary>
internal sealed class Chances
{
    private readonly List<(int Load, int End)>[] chances;

    /// <summary>Lists them.</summary>
    public Chances(Problem problem)
    {
        chances = [.. problem.Stages.Select(_ => new List<(int, int)>())];
        foreach (var opening in Openings.Of(problem))
        {
            foreach (var (stage, _) in opening.Most) chances[stage].Add((opening.Load, opening.End));
        }

        foreach (var pin in problem.Pins.Where(p => !p.Closed))
        {
            var kiln = problem.Kilns[pin.Kiln];
            for (var s = 0; s < chances.Length; s++)
            {
                if (kiln.Types[pin.Type].Takes[s]) chances[s].Add((kiln.LoadAt(pin.Start), kiln.EndOf(pin.Start, pin.Type)));
            }
        }
    }

    /// <summary>When a stage that is there from a moment on is unloaded at the earliest, min; int.MaxValue: never.</summary>
    public int Earliest(int stage, int ready)
    {
        var earliest = int.MaxValue;
        foreach (var (load, end) in chances[stage])
        {
            if (load >= ready && end < earliest) earliest = end;
        }

        return earliest;
    }
}
