using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>
/// Finds the fewest firings for the whole load: the one booked for what it accepts and others for the rest, or others for all of it
/// where those are fewer; and names what no firing accepts.
/// </summary>
internal sealed class Suggester(LoadTables tables, PieceJudge judge, Load load)
{
    private readonly FiringMenu menu = FiringMenu.Of(tables, load);

    /// <summary>Places the classes of the load.</summary>
    public Suggestion Suggest(IReadOnlyList<PieceClass> classes)
    {
        var accepted = classes.Where(c => c.Verdict == Verdict.Accept).ToList();
        var booked = accepted.Count == 0 ? 0 : LoadsOf(load.Kiln, load.Firing, accepted);
        if (accepted.Count == classes.Count) return new([], [], SuggestionBasis.Exact, KeepsBooked: true, booked);
        var all = classes.Where(c => c.Verdict != Verdict.Accept)
            .Select(c => Placement.Of(tables, judge, c, load.Firing.Kind, menu)).ToList();
        var placed = all.Where(p => !p.IsEmpty).ToList();
        var explaining = new Unplaceable(tables, judge, load, menu);
        var unplaced = all.Where(p => p.IsEmpty).Select(p => explaining.Explain(p.Classes[0])).ToList();
        if (placed.Count == 0) return new([], unplaced, SuggestionBasis.Exact, accepted.Count > 0, booked);

        ShareUnusual(placed);
        var beside = Plan.Of(tables, load, menu, Placement.Join(placed));
        // Firings for all can be fewer only when they are no more than those for the rest alone.
        var instead = accepted.Count > 0 && WithAccepted(placed, accepted) is { } whole
            ? Plan.Of(tables, load, menu, Placement.Join(whole))
            : null;
        var groups = beside.Assign().Select(Best).ToList();
        var others = instead?.Assign().Select(Best).ToList();
        var better = others is not null && others.Sum(g => g.Count) < groups.Sum(g => g.Count) + booked;
        var exact = beside.Basis == SuggestionBasis.Exact && (better || instead is null || instead.Basis == SuggestionBasis.Exact);
        return new(
            [.. (better ? others! : groups).Select((g, i) => Describe(g, i + 1, new(tables, judge, load, classes)))], unplaced,
            exact ? SuggestionBasis.Exact : SuggestionBasis.Heuristic, accepted.Count > 0 && !better, better ? 0 : booked);
    }

    private int LoadsOf(Kiln kiln, PlannedFiring firing, IEnumerable<PieceClass> classes) =>
        KilnLoads.Of(tables, kiln, firing, Pieces(classes))?.Loads ?? 1;

    private static List<Piece> Pieces(IEnumerable<PieceClass> classes) =>
        [.. classes.SelectMany(c => c.Members).OrderBy(m => m.Place).Select(m => m.Piece)];

    // This kiln where it can, else the one that is suggested; another of the studio where it takes fewer loads. None where no kiln was
    // told.
    private BestKiln Best(PlannedGroup group)
    {
        var (item, classes) = (group.Candidate.Item, group.Classes);
        var here = Accepts(load.Kiln);
        var kiln = here ? load.Kiln : load.Kilns.FirstOrDefault(k => ReferenceEquals(k, item.Kiln));
        var pieces = Pieces(classes);
        var least = kiln is null ? null : KilnLoads.Of(tables, kiln, item.Firing, pieces);
        if (least is not { Loads: > 1 }) return new(group, kiln, here, least);
        foreach (var other in load.Kilns.Where(k => !ReferenceEquals(k, kiln) && Accepts(k)))
        {
            if (KilnLoads.Of(tables, other, item.Firing, pieces) is { } loads && loads.Loads < least.Value.Loads)
                (kiln, least) = (other, loads);
        }

        return new(group, kiln, here, least);

        bool Accepts(Kiln k) => classes.TrueForAll(c => judge.Accepts(c.First, k, item.Firing));
    }

    // A firing that one piece can't do without may take others too.
    private void ShareUnusual(List<Placement> placed)
    {
        var needed = new PlacementSet(menu.Items.Count);
        foreach (var placement in placed.Where(p => !p.HasUsual)) needed.Add(placement.Items);
        if (needed.IsEmpty) return;
        var items = needed.Items().Select(i => menu.Items[i]).ToList();
        foreach (var placement in placed) placement.Ask(tables, judge, items);
    }

    // Each of the fewest firings for all takes something of the rest, or the rest alone would need fewer still.
    private List<Placement>? WithAccepted(List<Placement> placed, List<PieceClass> accepted)
    {
        var possible = new PlacementSet(menu.Items.Count);
        foreach (var placement in placed) possible.Add(placement.Items);
        var items = possible.Items().Select(i => menu.Items[i]).ToList();
        var whole = new List<Placement>(placed.Select(p => p.Alone()));
        foreach (var c in accepted)
        {
            Patience.Check();
            var placement = Placement.Among(tables, judge, c, load.Firing.Kind, menu, items);
            if (placement.IsEmpty) return null;
            whole.Add(placement);
        }

        return whole;
    }

    private SuggestedFiring Describe(BestKiln best, int number, Elsewhere elsewhere)
    {
        var (group, kiln, here, loads) = best;
        var (item, classes) = (group.Candidate.Item, group.Classes);
        var firing = item.Firing;
        foreach (var c in classes) (c.Instead, c.SuggestedFiring) = (Instead(firing, elsewhere.Of(c, item, kiln)), number);
        var pieces = Pieces(classes);
        return new(
            firing.Kind,
            firing.Cone.Text,
            firing.Atmosphere,
            [.. pieces.Select(p => p.Id)],
            here,
            KilnSuitability.Heats(tables, firing.Needs, firing.Atmosphere),
            kiln?.Id,
            item.IsUsual,
            Why(group, pieces.Count),
            Notes(classes, kiln ?? item.Kiln, firing),
            loads is { } known ? decimal.Round(known.Percent, 0, MidpointRounding.AwayFromZero) : null,
            loads?.Loads ?? 1);
    }

    private static Message Instead(PlannedFiring firing, Message? where)
    {
        var (kind, name) = (firing.Needs.Kind, firing.Needs.Name);
        var (cone, atmosphere) = (firing.Cone.Text, EnumWords.Word(firing.Atmosphere));
        return where is null
            ? Message.Of("loads.instead-firing", ("kind", kind), ("firing", name), ("cone", cone), ("atmosphere", atmosphere))
            : Message.Of(
                "loads.instead-firing-where",
                ("kind", kind), ("firing", name), ("cone", cone), ("atmosphere", atmosphere), ("where", where));
    }

    private Message Why(PlannedGroup group, int pieces)
    {
        var (item, best) = (group.Candidate.Item, group.Ideals);
        var cones = tables.PotterScale.Whole;
        return Message.Of(
            "loads.why-firing",
            ("usual", !item.IsUsual ? "no" : load.Offered.Count > 0 ? "offered" : "yes"),
            ("pieces", pieces), ("cone", item.Firing.Cone.Text), ("atmosphere", EnumWords.Word(item.Firing.Atmosphere)),
            ("same", best.Min == best.Max ? "yes" : "no"), ("min", cones[best.Min].Text), ("max", cones[best.Max].Text));
    }

    private List<RemainingNote> Notes(List<PieceClass> classes, Kiln kiln, PlannedFiring firing)
    {
        var notes = new SortedDictionary<ReasonCode, List<(Piece Piece, int Place)>>();
        foreach (var c in classes)
        {
            if (judge.NotesWhereAccepted(c.First, kiln, firing) is not { IsEmpty: false } codes) continue;
            foreach (var code in codes.Items())
            {
                if (!notes.TryGetValue(code, out var with)) notes[code] = with = [];
                with.AddRange(c.Members);
            }
        }

        return [.. notes.Select(n => new RemainingNote(
            n.Key, ReasonMaker.Title(n.Key), [.. n.Value.OrderBy(m => m.Place).Select(m => m.Piece.Id)]))];
    }

    // In which kiln a group is fired, and how many loads that takes.
    private sealed record BestKiln(PlannedGroup Group, Kiln? Kiln, bool Here, (int Loads, decimal Percent)? Loads)
    {
        public int Count => Loads?.Loads ?? 1;
    }
}
