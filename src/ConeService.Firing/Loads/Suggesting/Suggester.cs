using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>Finds the fewest firings that accept what a firing did not, and names what no firing accepts.</summary>
internal sealed class Suggester(LoadTables tables, PieceJudge judge, Load load)
{
    /// <summary>Places the classes given; none of them is accepted in the firing of the load.</summary>
    public (IReadOnlyList<SuggestedFiring> Firings, IReadOnlyList<UnplacedPieces> Unplaced, SuggestionBasis Basis) Suggest(
        IReadOnlyList<PieceClass> classes)
    {
        var all = classes.Select(c => Placement.Of(tables, judge, c, load.Firing.Kind)).ToList();
        var placements = Placement.Join(all.Where(p => !p.IsEmpty));
        var unplaced = all.Where(p => p.IsEmpty).Select(p => new Unplaceable(tables, judge, load).Explain(p.Classes[0])).ToList();
        if (placements.Count == 0) return ([], unplaced, SuggestionBasis.Exact);

        var candidates = Candidates.Of(tables, load.Kiln, placements);
        var everything = new PlacementSet(placements.Count);
        for (var i = 0; i < placements.Count; i++) everything.Add(i);
        var preferred = candidates.OrderBy(c => Dislike(c, c.Members, placements)).ToList();
        var (chosen, basis) = Cover.Fewest(preferred, everything);
        return ([.. Assign(chosen, candidates, everything, placements)], unplaced, basis);
    }

    private IEnumerable<SuggestedFiring> Assign(
        List<Candidate> chosen, List<Candidate> candidates, PlacementSet everything, List<Placement> placements)
    {
        var left = everything;
        foreach (var candidate in chosen)
        {
            Patience.Check();
            var members = candidate.Members.Common(left);
            left = left.Without(candidate.Members);
            if (members.IsEmpty) continue;
            // For just these pieces another cone or atmosphere may suit better.
            var best = candidates.Where(c => members.IsIn(c.Members)).MinBy(c => Dislike(c, members, placements))!;
            yield return Describe(best.Firing, members, placements);
        }
    }

    private SuggestedFiring Describe(PlannedFiring firing, PlacementSet members, List<Placement> placements)
    {
        var classes = members.Items().SelectMany(i => placements[i].Classes).ToList();
        var here = classes.TrueForAll(c => judge.Accepts(c.First, load.Kiln, firing));
        return new(
            firing.Kind,
            firing.Cone.Text,
            firing.Atmosphere,
            [.. classes.SelectMany(c => c.Members).OrderBy(m => m.Place).Select(m => m.Piece.Id)],
            here,
            KilnSuitability.Heats(tables, firing.Needs, firing.Atmosphere));
    }

    // Another kiln weighs most, then another kind, then how far the ware is from its best cone, then another atmosphere.
    private (int Kiln, int Kind, double Distance, int Atmosphere, FiringKind, Atmosphere, int) Dislike(
        Candidate candidate, PlacementSet members, List<Placement> placements)
    {
        var (firing, distance, pieces) = (candidate.Firing, 0, 0);
        foreach (var i in members.Items())
        {
            var count = placements[i].Count;
            distance += Math.Abs(placements[i].Ideal - firing.Cone.Step) * count;
            pieces += count;
        }

        return (
            candidate.InKiln ? 0 : 1,
            firing.Kind == load.Firing.Kind ? 0 : 1,
            (double)distance / pieces,
            firing.Atmosphere == load.Firing.Atmosphere ? 0 : 1,
            firing.Kind,
            firing.Atmosphere,
            firing.Cone.Step);
    }
}
