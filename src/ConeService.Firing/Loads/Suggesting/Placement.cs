using System.Globalization;
using System.Text;
using ConeService.Data;
using ConeService.Firing.Loads.Rules;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>
/// Where pieces could be fired: for each kind and atmosphere the whole cones that accept them, as bits. Classes with the same
/// choices share one.
/// </summary>
internal sealed class Placement
{
    private readonly List<PieceClass> classes;

    private Placement(PieceClass first, Dictionary<(FiringKind Kind, Atmosphere Atmosphere), ulong> cones)
    {
        classes = [first];
        Cones = cones;
        Ideal = Neighbours.BestStep(first.First) ?? IdealOfBody(first.First);
    }

    /// <summary>The classes that share these choices.</summary>
    public IReadOnlyList<PieceClass> Classes => classes;

    /// <summary>One of the pieces; they are alike in all that neighbours ask.</summary>
    public Piece First => classes[0].First;

    /// <summary>How many kinds of piece there are; how many alike of each never outvotes another kind.</summary>
    public int Count => classes.Count;

    public IReadOnlyDictionary<(FiringKind Kind, Atmosphere Atmosphere), ulong> Cones { get; }

    /// <summary>The step it would best be fired to.</summary>
    public int Ideal { get; }

    public bool IsEmpty => Cones.Count == 0;

    /// <summary>True when a firing of this kind and atmosphere accepts it at the cone.</summary>
    public bool Accepts(FiringKind kind, Atmosphere atmosphere, int step) =>
        Cones.TryGetValue((kind, atmosphere), out var mask) && (mask >> step & 1) != 0;

    /// <summary>Joins those with the same choices, the same ideal and the same vapours: they can always be fired together.</summary>
    public static List<Placement> Join(IEnumerable<Placement> placements)
    {
        var joined = new Dictionary<string, Placement>(StringComparer.Ordinal);
        foreach (var placement in placements)
        {
            var key = placement.Signature();
            if (joined.TryGetValue(key, out var same)) same.classes.AddRange(placement.classes);
            else joined[key] = placement;
        }

        return [.. joined.Values];
    }

    private string Signature()
    {
        var key = new StringBuilder();
        foreach (var ((kind, atmosphere), mask) in Cones.OrderBy(c => c.Key.Kind).ThenBy(c => c.Key.Atmosphere))
            key.Append(CultureInfo.InvariantCulture, $"{(int)kind},{(int)atmosphere},{mask};");
        key.Append(CultureInfo.InvariantCulture, $"{Ideal}");
        foreach (var item in First.Coats) key.Append(CultureInfo.InvariantCulture, $"|{item.GivesOff.Bits}/{item.SpoiledBy.Bits}");
        return key.ToString();
    }

    /// <summary>Asks the judge for every firing that the piece could be meant for.</summary>
    public static Placement Of(LoadTables tables, PieceJudge judge, PieceClass pieces, FiringKind asked)
    {
        var piece = pieces.First;
        var cones = new Dictionary<(FiringKind Kind, Atmosphere Atmosphere), ulong>();
        // What was booked is what is wanted; only where it accepts at no cone is the firing taken that the ware is ready for.
        if (tables.Kind(asked).Takes.Has(piece.State)) Add(tables, judge, piece, tables.Kind(asked), cones);
        if (cones.Count == 0)
        {
            foreach (var kind in ReadyFor(piece).Where(k => k != asked)) Add(tables, judge, piece, tables.Kind(kind), cones);
        }

        return new(pieces, cones);
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

    private static void Add(
        LoadTables tables, PieceJudge judge, Piece piece, FiringNeeds needs,
        Dictionary<(FiringKind Kind, Atmosphere Atmosphere), ulong> cones)
    {
        var (from, to) = Span(piece, needs);
        foreach (var atmosphere in needs.Row.Atmospheres)
        {
            Patience.Check();
            var kiln = KilnSuitability.Suiting(tables, needs, atmosphere);
            var mask = 0UL;
            for (var step = from; step <= to; step++)
            {
                if (judge.Accepts(piece, kiln, new(needs, tables.PotterScale.Whole[step], atmosphere))) mask |= 1UL << step;
            }

            if (mask != 0) cones[(needs.Row.Id, atmosphere)] = mask;
        }
    }

    // Outside the ranges of body and coats no cone is simply accepted, so none there is tried.
    private static (int From, int To) Span(Piece piece, FiringNeeds needs)
    {
        var (from, to) = (needs.Min.Step, needs.Max.Step);
        if (piece.Body is { } body && needs.Row.Id == FiringKind.Bisque)
        {
            from = Math.Max(from, body.BisqueMin.Step - BisqueRangeRule.Slightly);
            to = Math.Min(to, body.BisqueMax.Step + BisqueRangeRule.Slightly);
        }

        if (piece.Body is { Mature: { } mature }) to = Math.Min(to, mature.Max.Step);
        foreach (var item in piece.Coats.Where(x => x.Coat.Melts || x.Coat.IsOverglaze))
        {
            // In an overglaze firing the glaze below was fired before.
            if (needs.Row.Id == FiringKind.Overglaze && !item.Coat.IsOverglaze) continue;
            // What was fired before may stay below its range.
            if (!item.IsFired || item.WasUnderfired) from = Math.Max(from, item.Coat.Min.Step);
            if (item.Coat.Max is { } max) to = Math.Min(to, max.Step);
        }

        return (from, to);
    }

    private static int IdealOfBody(Piece piece)
    {
        if (piece.Coats.FirstOrDefault(x => x.Coat is { IsOverglaze: true, Best: not null })?.Coat.Best is { } overglaze)
            return overglaze.Step;
        if (piece.Body is not { } body) return 0;
        return piece.State == PieceState.BoneDry || body.Mature is null
            ? (body.BisqueMin.Step + body.BisqueMax.Step) / 2
            : body.Mature.Best.Step;
    }
}
