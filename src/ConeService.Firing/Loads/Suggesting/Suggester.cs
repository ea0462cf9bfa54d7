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
        if (accepted.Count == classes.Count) return new([], [], SuggestionBasis.Exact, KeepsBooked: true);
        var all = classes.Where(c => c.Verdict != Verdict.Accept)
            .Select(c => Placement.Of(tables, judge, c, load.Firing.Kind, menu)).ToList();
        var placed = all.Where(p => !p.IsEmpty).ToList();
        var explaining = new Unplaceable(tables, judge, load, menu);
        var unplaced = all.Where(p => p.IsEmpty).Select(p => explaining.Explain(p.Classes[0])).ToList();
        if (placed.Count == 0) return new([], unplaced, SuggestionBasis.Exact, accepted.Count > 0);

        ShareUnusual(placed);
        var beside = Plan.Of(tables, load, menu, Placement.Join(placed));
        // Firings for all can be fewer only when they are no more than those for the rest alone.
        var instead = accepted.Count > 0 && WithAccepted(placed, accepted) is { } whole
            ? Plan.Of(tables, load, menu, Placement.Join(whole))
            : null;
        var better = instead is not null && instead.Chosen.Count <= beside.Chosen.Count;
        var plan = better ? instead! : beside;
        var exact = beside.Basis == SuggestionBasis.Exact && (better || instead is null || instead.Basis == SuggestionBasis.Exact);
        return new(
            [.. plan.Assign().Select((g, i) => Describe(g, i + 1))], unplaced, exact ? SuggestionBasis.Exact : SuggestionBasis.Heuristic,
            accepted.Count > 0 && !better);
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

    private SuggestedFiring Describe(PlannedGroup group, int number)
    {
        var (item, classes) = (group.Candidate.Item, group.Classes);
        var firing = item.Firing;
        var here = classes.TrueForAll(c => judge.Accepts(c.First, load.Kiln, firing));
        var kiln = here ? load.Kiln : load.Kilns.FirstOrDefault(k => ReferenceEquals(k, item.Kiln));
        var instead = Message.Of(
            "loads.instead-firing",
            ("kind", firing.Needs.Kind), ("firing", firing.Needs.Name), ("cone", firing.Cone.Text),
            ("atmosphere", EnumWords.Word(firing.Atmosphere)));
        foreach (var c in classes) (c.Instead, c.SuggestedFiring) = (instead, number);
        var pieces = classes.SelectMany(c => c.Members).OrderBy(m => m.Place).Select(m => m.Piece).ToList();
        var full = kiln is null ? null : LoadRoom.PercentFull(tables, kiln, firing, pieces);
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
            full is { } percent ? decimal.Round(percent, 0, MidpointRounding.AwayFromZero) : null,
            full is > 100 ? (int)decimal.Ceiling(full.Value / 100) : 1);
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
}
