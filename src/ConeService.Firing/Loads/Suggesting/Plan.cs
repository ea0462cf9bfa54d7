using ConeService.Contract.Loads;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>The fewest firings for a set of placements.</summary>
internal sealed class Plan
{
    private readonly Load load;
    private readonly List<Placement> placements;
    private readonly List<Candidate> candidates;
    private readonly PlacementSet everything;

    private Plan(Load load, List<Placement> placements, List<Candidate> candidates)
    {
        (this.load, this.placements, this.candidates) = (load, placements, candidates);
        everything = new(placements.Count);
        for (var i = 0; i < placements.Count; i++) everything.Add(i);
        var preferred = candidates.OrderBy(c => Dislike(c, c.Members)).ToList();
        (Chosen, Basis) = Cover.Fewest(preferred, everything);
    }

    /// <summary>The firings chosen.</summary>
    public IReadOnlyList<Candidate> Chosen { get; }

    /// <summary>Whether fewer are impossible.</summary>
    public SuggestionBasis Basis { get; }

    /// <summary>Plans; every placement is accepted by some firing of the menu.</summary>
    public static Plan Of(LoadTables tables, Load load, FiringMenu menu, List<Placement> placements) =>
        new(load, placements, Candidates.Of(tables, load, menu, placements));

    /// <summary>Puts each placement into one of the firings chosen.</summary>
    public IEnumerable<PlannedGroup> Assign()
    {
        var left = everything;
        foreach (var candidate in Chosen)
        {
            var members = candidate.Members.Common(left);
            left = left.Without(candidate.Members);
            if (members.IsEmpty) continue;
            // For just these pieces another cone or atmosphere may suit better.
            var best = candidates.Where(c => members.IsIn(c.Members)).MinBy(c => Dislike(c, members))!;
            var placed = members.Items().Select(i => placements[i]).ToList();
            yield return new(
                best, [.. placed.SelectMany(p => p.Classes)], (placed.Min(p => p.Ideal), placed.Max(p => p.Ideal)));
        }
    }

    // A firing that no studio runs weighs most, then another kiln, then another kind, then how far the ware is from its best cone, then
    // another atmosphere.
    private (int Unusual, int Kiln, int Kind, double Distance, int Atmosphere, int Item) Dislike(Candidate candidate, PlacementSet members)
    {
        var (firing, distance, pieces) = (candidate.Firing, 0, 0);
        foreach (var i in members.Items())
        {
            var count = placements[i].Count;
            distance += Math.Abs(placements[i].Ideal - firing.Cone.Step) * count;
            pieces += count;
        }

        return (
            candidate.Item.IsUsual ? 0 : 1,
            candidate.InKiln ? 0 : 1,
            firing.Kind == load.Firing.Kind ? 0 : 1,
            (double)distance / pieces,
            firing.Atmosphere == load.Firing.Atmosphere ? 0 : 1,
            candidate.Item.Index);
    }
}

/// <summary>Pieces that go into one firing.</summary>
/// <param name="Candidate">The firing.</param>
/// <param name="Classes">The pieces.</param>
/// <param name="Ideals">Steps of their best cones, the lowest and the highest.</param>
internal sealed record PlannedGroup(Candidate Candidate, List<PieceClass> Classes, (int Min, int Max) Ideals);
