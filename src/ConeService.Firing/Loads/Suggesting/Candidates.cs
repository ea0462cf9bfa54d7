using ConeService.Data;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>
/// Every firing worth booking for a set of placements. Where glazes melt side by side a firing stands in several forms, one
/// without the givers and one without the spoiled of each vapour, so that what is in a candidate may really go together.
/// </summary>
internal static class Candidates
{
    private static readonly Fume[] Travelling = [Fume.Chrome, Fume.Copper, Fume.Lead, Fume.Cadmium, Fume.Selenium];

    public static List<Candidate> Of(LoadTables tables, Load load, FiringMenu menu, IReadOnlyList<Placement> placements)
    {
        var found = new List<Candidate>();
        foreach (var item in menu.Items)
        {
            var going = new List<int>();
            for (var i = 0; i < placements.Count; i++)
            {
                if (placements[i].Items.Has(item.Index)) going.Add(i);
            }

            Patience.Check();
            // What no studio runs is suggested only where some piece has nothing else.
            if (going.Count == 0 || !(item.IsUsual || going.Exists(i => !placements[i].HasUsual))) continue;
            var inKiln = load.Kilns.Count == 0
                ? KilnSuitability.CanFire(tables, load.Kiln, item.Firing)
                : ReferenceEquals(item.Kiln, load.Kiln);
            foreach (var together in item.Firing.MeltsGlazes ? Together(placements, going, item.Firing) : [going])
            {
                var members = new PlacementSet(placements.Count);
                foreach (var i in together) members.Add(i);
                found.Add(new(item, inKiln, members));
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
        // Ware that does both goes alone of these, with what does neither.
        return
        [
            set.Where(i => !Gives(i)).ToList(),
            set.Where(i => !Suffers(i)).ToList(),
            .. set.Where(i => Gives(i) && Suffers(i)).Select(i => set.Where(n => n == i || !(Gives(n) || Suffers(n))).ToList()),
        ];
    }
}
