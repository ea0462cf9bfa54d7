using System.Globalization;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Planning.Digest;

/// <summary>
/// What would take ware that no firing of the menus does: by the load check, every kind of firing in every atmosphere, cone by cone, in a
/// kiln that suits it.
/// </summary>
internal sealed class Wanted(FiringReference reference, Acceptance acceptance, IReadOnlyList<ReadKiln> kilns)
{
    // More of them would be no help to whoever reads.
    private const int MostNamed = 3;

    // Of entries that are equally near so many are asked for their reasons, and the fewest are told.
    private const int MostNearest = 3;
    private readonly Dictionary<string, IReadOnlyList<NeededFiring>> known = [];
    private readonly Dictionary<(FiringKind, Atmosphere, KilnHeat, string), (Kiln Kiln, MenuFiring Firing)> asked = [];

    private readonly List<string> cones =
        [.. reference.Dataset.Cones.Where(c => c.Kind == "whole").OrderBy(c => c.Position).Select(c => c.Id)];

    /// <summary>The firings that would take a ware, in the order in which the data package has their kinds; of what the load check accepts
    /// nowhere those where somebody would have to look at it.</summary>
    public IReadOnlyList<NeededFiring> Firings(Ware ware)
    {
        if (known.TryGetValue(ware.Key, out var found)) return found;
        found = Firings(ware, Verdict.Accept);
        return known[ware.Key] = found.Count > 0 ? found : Firings(ware, Verdict.Review);
    }

    /// <summary>The same in a sentence: of the first kind that would take it, or what must be done to it first.</summary>
    public Message Sentence(Ware ware)
    {
        var firings = Firings(ware);
        if (firings.Count == 0)
        {
            var mend = Nearest(ware).Select(r => r.Instead).OfType<Message>().Take(1);
            return Message.Sentences(mend.Prepend(Message.Of("plans.needs-nothing-takes-it")));
        }

        var could = kilns.Where(k => firings.Any(f => Could(k, f, ware))).Select(k => k.Id).ToList();
        return Message.Of(
            could.Count > 0 ? "plans.needs-firing-of-kiln" : "plans.needs-firing",
            ("firings", string.Join("; or ", firings.Where(f => f.FiringKind == firings[0].FiringKind).Take(MostNamed).Select(Words))),
            ("kilns", string.Join(", ", could)));
    }

    /// <summary>What the load check says of the entry that comes nearest to what would take a ware: of its kind, in its atmosphere, at the
    /// nearest cone.</summary>
    public IReadOnlyList<Reason> Nearest(Ware ware)
    {
        var first = Firings(ware) is [var one, ..] ? one : null;
        var entries = kilns.SelectMany(k => k.Menu.Select(m => (Kiln: k.Sent.Kiln!, m.Sent))).ToList();
        if (entries.Count == 0) return [];
        (int Kind, int Atmosphere, int Steps, Verdict Verdict) Distance((Kiln Kiln, MenuFiring Sent) e) => (
            first is not null && e.Sent.FiringKind.Text == EnumWords.Word(first.FiringKind) ? 0 : 1,
            first is not null && e.Sent.Atmosphere.Text == EnumWords.Word(first.Atmosphere) ? 0 : 1,
            first is null ? 0 : Steps(e.Sent.Cone.Text!, first),
            acceptance.Of(e.Kiln, e.Sent, ware));
        // Sentences are asked for of those alone that are nearest; of equal firings in equal kilns once.
        return entries.GroupBy(Distance).MinBy(g => g.Key)!.DistinctBy(e => Acceptance.Key(e.Kiln, e.Sent)).Take(MostNearest)
            .Select(e => acceptance.Reasons(e.Kiln, e.Sent, ware)).MinBy(r => r.Count) ?? [];
    }

    private List<NeededFiring> Firings(Ware ware, Verdict worst)
    {
        var found = new List<NeededFiring>();
        foreach (var kind in reference.Dataset.FiringKinds)
        {
            var (low, high) = (cones.IndexOf(kind.ConeMin), cones.IndexOf(kind.ConeMax));
            foreach (var atmosphere in kind.Atmospheres)
            {
                Patience.Check();
                bool Takes(KilnHeat heat, string cone)
                {
                    var (kiln, firing) = Asked(kind.Id, atmosphere, heat, cone);
                    return acceptance.Judge(kiln, firing, ware) <= worst;
                }

                var taken = kind.KilnHeats.Select(h => (Heat: h, Cones: Enumerable.Range(low, high - low + 1)
                    .Where(c => Takes(h, cones[c])).ToList())).Where(t => t.Cones.Count > 0).ToList();
                if (taken.Count == 0) continue;
                found.Add(new(
                    kind.Id, new(cones[taken.Min(t => t.Cones[0])], null, cones[taken.Max(t => t.Cones[^1])]), atmosphere,
                    [.. taken.Select(t => t.Heat)]));
            }
        }

        return found;
    }

    // Whether a kiln could fire it, were it on its menu.
    private bool Could(ReadKiln kiln, NeededFiring firing, Ware ware) =>
        firing.KilnHeats.Contains(EnumWords.Of<KilnHeat>(kiln.Sent.Kiln!.Heat.Text!)) && acceptance.Judge(
            kiln.Sent.Kiln!, Asked(firing.FiringKind, firing.Atmosphere, firing.KilnHeats[0], firing.Cones.Min!).Firing, ware)
            < Verdict.Refuse;

    // Each is made once: what is judged finds kilns and firings again by their being the same.
    private (Kiln Kiln, MenuFiring Firing) Asked(FiringKind kind, Atmosphere atmosphere, KilnHeat heat, string cone)
    {
        if (!asked.TryGetValue((kind, atmosphere, heat, cone), out var made))
        {
            asked[(kind, atmosphere, heat, cone)] = made = (
                new(Heat: EnumWords.Word(heat), MaxCone: cones[^1], Atmospheres: [EnumWords.Word(atmosphere)]),
                new(EnumWords.Word(kind), cone, EnumWords.Word(atmosphere)));
        }

        return made;
    }

    private string Words(NeededFiring firing)
    {
        var name = reference.Dataset.FiringKinds.First(k => k.Id == firing.FiringKind).Name;
        var to = firing.Cones.Min == firing.Cones.Max ? firing.Cones.Min : $"{firing.Cones.Min} to {firing.Cones.Max}";
        return string.Create(
            CultureInfo.InvariantCulture, $"{name} in {EnumWords.Word(firing.Atmosphere)}, cone {to}");
    }

    private int Steps(string cone, NeededFiring firing)
    {
        var at = cones.IndexOf(reference.Cones.Read(cone).ToString());
        var (low, high) = (cones.IndexOf(firing.Cones.Min!), cones.IndexOf(firing.Cones.Max!));
        return at < low ? low - at : Math.Max(0, at - high);
    }
}
