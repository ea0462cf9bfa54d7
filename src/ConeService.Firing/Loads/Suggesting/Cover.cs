using ConeService.Contract.Loads;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>
/// Chooses the fewest candidates that hold every placement. A search with bounds finds the least number where there are few
/// enough different sets; beyond that the candidate that holds most of what is left is taken again and again.
/// </summary>
internal sealed class Cover
{
    private const int MostForSearch = 64;
    private const int MostCandidatesForSearch = 400;
    private const int MostSteps = 20_000;

    private readonly IReadOnlyList<Candidate> candidates;
    private List<Candidate> best;
    private int steps;

    private Cover(IReadOnlyList<Candidate> candidates, List<Candidate> start) => (this.candidates, best) = (candidates, start);

    /// <summary>The candidates chosen, and whether fewer are impossible.</summary>
    /// <param name="candidates">In order of preference; of equally good ones the first is taken.</param>
    /// <param name="all">Everything to be held; each of it by some candidate.</param>
    public static (List<Candidate> Chosen, SuggestionBasis Basis) Fewest(IReadOnlyList<Candidate> candidates, PlacementSet all)
    {
        var greedy = Greedy(candidates, all);
        if (greedy.Count <= 1) return (greedy, SuggestionBasis.Exact);
        if (all.Count > MostForSearch || candidates.Count > MostCandidatesForSearch * 4) return (greedy, SuggestionBasis.Heuristic);
        var useful = Undominated(candidates);
        if (useful.Count > MostCandidatesForSearch) return (greedy, SuggestionBasis.Heuristic);
        var search = new Cover(useful, greedy);
        search.Search(all, []);
        return (search.best, search.steps < MostSteps ? SuggestionBasis.Exact : SuggestionBasis.Heuristic);
    }

    private void Search(PlacementSet left, List<Candidate> chosen)
    {
        if (left.IsEmpty)
        {
            if (chosen.Count < best.Count) best = [.. chosen];
            return;
        }

        Patience.Check();
        if (++steps >= MostSteps) return;
        var most = candidates.Max(c => c.Members.CountIn(left));
        if (chosen.Count + ((left.Count + most - 1) / most) >= best.Count) return;
        // The placement with the fewest ways out decides first.
        var hardest = left.Items().MinBy(i => candidates.Count(c => c.Members.Has(i)));
        foreach (var candidate in candidates.Where(c => c.Members.Has(hardest)).OrderByDescending(c => c.Members.CountIn(left)))
        {
            chosen.Add(candidate);
            Search(left.Without(candidate.Members), chosen);
            chosen.RemoveAt(chosen.Count - 1);
        }
    }

    private static List<Candidate> Greedy(IReadOnlyList<Candidate> candidates, PlacementSet all)
    {
        var (left, chosen) = (all, new List<Candidate>());
        while (!left.IsEmpty)
        {
            Patience.Check();
            var next = candidates.MaxBy(c => c.Members.CountIn(left))!;
            chosen.Add(next);
            left = left.Without(next.Members);
        }

        return chosen;
    }

    private static List<Candidate> Undominated(IReadOnlyList<Candidate> candidates)
    {
        var kept = new List<Candidate>();
        foreach (var candidate in candidates)
        {
            Patience.Check();
            if (kept.Exists(k => candidate.Members.IsIn(k.Members))) continue;
            kept.RemoveAll(k => k.Members.IsIn(candidate.Members));
            kept.Add(candidate);
        }

        return kept;
    }
}
