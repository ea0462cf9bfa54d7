using ConeService.Data;
using ConeService.Firing.Loads.Rules;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>Where pieces could be fired: the firings of the menu that accept them. Classes with the same choices share one.</summary>
internal sealed class Placement
{
    private readonly List<PieceClass> classes;

    private Placement(PieceClass first, IReadOnlyList<FiringKind> kinds, PlacementSet items, bool hasUsual)
    {
        classes = [first];
        (Kinds, Items, HasUsual) = (kinds, items, hasUsual);
        Ideal = IdealStep.Of(first.First, kinds);
    }

    /// <summary>The classes that share these choices.</summary>
    public IReadOnlyList<PieceClass> Classes => classes;

    /// <summary>One of the pieces; they are alike in all that neighbours ask.</summary>
    public Piece First => classes[0].First;

    /// <summary>How many kinds of piece there are; how many alike of each never outvotes another kind.</summary>
    public int Count => classes.Count;

    /// <summary>The firings of the menu that accept it, as far as they were asked.</summary>
    public PlacementSet Items { get; }

    /// <summary>True when a usual firing is among them.</summary>
    public bool HasUsual { get; }

    /// <summary>The step it would best be fired to.</summary>
    public int Ideal { get; }

    public bool IsEmpty => Items.IsEmpty;

    private IReadOnlyList<FiringKind> Kinds { get; }

    /// <summary>Joins those with the same choices, the same ideal and the same vapours: they can always be fired together.</summary>
    public static List<Placement> Join(IEnumerable<Placement> placements)
    {
        var all = placements.ToList();
        // Whether ware is for food matters to its neighbours only where one of them gives off what must not settle on it.
        var poisonous = all.Exists(p => p.First.Coats.Any(c => c.GivesOff.Overlaps(Neighbours.Poisonous)));
        var joined = new Dictionary<Placement, Placement>(new Alike(poisonous));
        foreach (var placement in all)
        {
            if (!joined.TryAdd(placement, placement)) joined[placement].classes.AddRange(placement.classes);
        }

        return [.. joined.Values];
    }

    /// <summary>Asks the judge for every firing that the piece could be meant for.</summary>
    public static Placement Of(LoadTables tables, PieceJudge judge, PieceClass pieces, FiringKind asked, FiringMenu menu)
    {
        var piece = pieces.First;
        var items = new PlacementSet(menu.Items.Count);
        // Nothing on it is left to be fired: whether it goes in again is for whoever fires to say, and no firing is for it to be sent to.
        if (IsFinished(piece)) return new(pieces, [], items, hasUsual: false);
        // What was booked is what is wanted; only where it accepts at no cone is the firing taken that the ware is ready for.
        IReadOnlyList<FiringKind>[] choices =
            [OrderRule.CanTake(tables.Kind(asked), piece.State) ? [asked] : [], [.. ReadyFor(piece).Where(k => k != asked)]];
        foreach (var kinds in choices)
        {
            foreach (var usual in new[] { true, false })
            {
                foreach (var kind in kinds) Ask(tables, judge, piece, menu.Of(kind).Where(i => i.IsUsual == usual), items);
                if (!items.IsEmpty) return new(pieces, kinds, items, usual);
            }
        }

        return new(pieces, [], items, hasUsual: false);
    }

    /// <summary>Asks the judge for some firings only, of the kind that was booked.</summary>
    public static Placement Among(
        LoadTables tables, PieceJudge judge, PieceClass pieces, FiringKind asked, FiringMenu menu, IEnumerable<MenuItem> among)
    {
        var placement = new Placement(pieces, [asked], new(menu.Items.Count), hasUsual: true);
        placement.Ask(tables, judge, among);
        return placement;
    }

    /// <summary>The same for its first class alone: what joins it elsewhere does not count here.</summary>
    public Placement Alone() => new(classes[0], Kinds, Items, HasUsual);

    /// <summary>Asks for further firings.</summary>
    public void Ask(LoadTables tables, PieceJudge judge, IEnumerable<MenuItem> items)
    {
        foreach (var kind in Kinds) Ask(tables, judge, First, items.Where(i => i.Firing.Kind == kind && !Items.Has(i.Index)), Items);
    }

    /// <summary>The kinds of firing that the ware is ready for, by its state and its coats.</summary>
    public static IReadOnlyList<FiringKind> ReadyFor(Piece piece)
    {
        if (piece.State is PieceState.BoneDry or PieceState.Bisqued
            && piece.Coats.FirstOrDefault(x => x.Coat.Kind == CoatKind.Vapour) is { } vapour)
            return [.. vapour.Coat.FiredIn.Items()];
        return piece.State switch
        {
            PieceState.BoneDry => piece.Coats.Any(x => x.Coat.Melts) ? [FiringKind.Single] : [FiringKind.Bisque],
            PieceState.Bisqued => piece.Coats.Any(x => x.Coat.Kind == CoatKind.RakuGlaze) ? [FiringKind.Raku] : [FiringKind.Glaze],
            PieceState.GlazeFired when piece.Coats.Any(x => x.Coat.IsOverglaze && !x.IsFired) => [FiringKind.Overglaze],
            PieceState.GlazeFired when piece.Coats.Any(x =>
                x.Coat.AppliedOn.Has(PieceState.GlazeFired) || (x.Coat.Melts && (!x.IsFired || x.WasUnderfired))) => [FiringKind.Glaze],
            _ => [],
        };
    }

    private static bool IsFinished(Piece piece) => piece.State == PieceState.GlazeFired && ReadyFor(piece).Count == 0;

    private static void Ask(LoadTables tables, PieceJudge judge, Piece piece, IEnumerable<MenuItem> items, PlacementSet accepted)
    {
        (int From, int To)? span = null;
        foreach (var item in items)
        {
            Patience.Check();
            var (from, to) = span ??= FiringSpan.Of(piece, item.Firing.Needs);
            var step = item.Firing.Cone.Step;
            if (step >= from && step <= to && judge.Accepts(piece, item.Kiln, item.Firing)) accepted.Add(item.Index);
        }
    }

    private sealed class Alike(bool poisonous) : IEqualityComparer<Placement>
    {
        public bool Equals(Placement? x, Placement? y) =>
            ReferenceEquals(x, y)
            || (x is not null && y is not null && x.Ideal == y.Ideal && x.HasUsual == y.HasUsual && x.Items.IsSame(y.Items)
                && SameVapours(x.First, y.First));

        public int GetHashCode(Placement obj) => HashCode.Combine(obj.Items.Hash(), obj.Ideal);

        private bool SameVapours(Piece one, Piece other)
        {
            var (gives, suffers) = Vapours(one);
            // What spoils its like goes alone, each kind of piece for itself.
            return Vapours(other) == (gives, suffers) && !gives.Overlaps(suffers);
        }

        private (EnumSet<Fume> Gives, EnumSet<Fume> Suffers) Vapours(Piece piece)
        {
            var gives = default(EnumSet<Fume>);
            var suffers = poisonous && piece.Use == PieceUse.Food ? Neighbours.Poisonous : default;
            foreach (var item in piece.Coats) (gives, suffers) = (gives.With(item.GivesOff), suffers.With(item.SpoiledBy));
            return (gives, suffers);
        }
    }
}
