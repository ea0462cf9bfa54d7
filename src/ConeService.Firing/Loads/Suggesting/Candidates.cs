using ConeService.Data;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>
/// Every firing worth booking for a set of placements. Where glazes melt side by side a firing stands in several forms, one
/// without the givers and one without the spoiled of each vapour, so that what is in a candidate may really go together.
/// </summary>
internal static class Candidates
{
    private static readonly Fume[] Travelling = [Fume.Chrome, Fume.Copper];

    public static List<Candidate> Of(LoadTables tables, Kiln kiln, IReadOnlyList<Placement> placements)
    {
        var found = new List<Candidate>();
        var asked = placements.SelectMany(p => p.Cones.Keys).Distinct().OrderBy(k => k.Kind).ThenBy(k => k.Atmosphere);
        foreach (var (kind, atmosphere) in asked)
        {
            var needs = tables.Kind(kind);
            foreach (var cone in tables.PotterScale.Whole)
            {
                Patience.Check();
                var going = Enumerable.Range(0, placements.Count).Where(i => placements[i].Accepts(kind, atmosphere, cone.Step)).ToList();
                if (going.Count == 0) continue;
                var firing = new PlannedFiring(needs, cone, atmosphere);
                var inKiln = KilnSuitability.CanFire(tables, kiln, firing);
                foreach (var together in firing.MeltsGlazes ? Together(placements, going, firing) : [going])
                {
                    Patience.Check();
                    var members = new PlacementSet(placements.Count);
                    foreach (var i in together) members.Add(i);
                    found.Add(new(firing, inKiln, members));
                }
            }
        }

        return found;
    }

    private static IEnumerable<List<int>> Together(IReadOnlyList<Placement> placements, List<int> going, PlannedFiring firing)
    {
        List<List<int>> sets = [going];
        foreach (var fume in Travelling) sets = [.. sets.SelectMany(s => Apart(placements, s, firing, fume))];
        return sets.Where(s => s.Count > 0);
    }

    private static IEnumerable<List<int>> Apart(IReadOnlyList<Placement> placements, List<int> set, PlannedFiring firing, Fume fume)
    {
        bool Gives(int i) => Neighbours.GivenOff(placements[i].First, firing).Has(fume);
        bool Suffers(int i) => Neighbours.SpoiledBy(placements[i].First, firing).Has(fume);
        if (!set.Exists(Gives) || !set.Exists(Suffers)) return [set];
        // Ware that does both goes alone.
        return
        [
            set.Where(i => !Gives(i)).ToList(),
            set.Where(i => !Suffers(i)).ToList(),
            .. set.Where(i => Gives(i) && Suffers(i)).Select(i => new List<int> { i }),
        ];
    }
}
