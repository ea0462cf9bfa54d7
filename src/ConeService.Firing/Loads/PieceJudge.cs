using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Loads.Rules;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Judges one piece in one firing by every rule; what its neighbours do to it comes on top.</summary>
internal sealed class PieceJudge(LoadTables tables)
{
    // Those that another cone would mend.
    private static readonly IPieceRule[] ConeRules = [new BodyOverRule(), new BodyUnderRule(), new BisqueRangeRule(), new CoatRangeRule()];

    /// <summary>The rules; of reasons that weigh the same those of the first come first.</summary>
    internal static readonly IPieceRule[] Rules =
    [
        new MarksRule(), new DrynessRule(), new OrderRule(), new HistoryRule(), new KilnRule(), new OverglazeRule(),
        new VapourCoatRule(), .. ConeRules, new ThermalShockRule(), new AtmosphereRule(), new FoodRule(), new MetalRule(),
        new RoomRule(), new ShelfRule(), new UnknownRule(),
    ];

    private readonly IPieceRule[] rules = Applying(tables.Dataset, Rules);
    private readonly Judgement quiet = new(tables);

    /// <summary>Ids of the load rules that the reasons of a piece rest on.</summary>
    public static IEnumerable<string> RestsOn(Dataset dataset) =>
        Applying(dataset, Rules).SelectMany(r => r.RestsOn).Append(LoadRuleIds.SuspectTheZero);

    /// <summary>The version of a package without what follows its numbers.</summary>
    internal static Version VersionOf(Dataset dataset) => Version.Parse(dataset.VersionId.Split('-', '+')[0]);

    /// <summary>The rules that a package was written with.</summary>
    internal static IPieceRule[] Applying(Dataset dataset, IEnumerable<IPieceRule> rules)
    {
        var version = VersionOf(dataset);
        return [.. rules.Where(r => r.Since is null || version >= r.Since)];
    }

    /// <summary>The reasons, with the lost zero before all.</summary>
    public Judgement Judge(Piece piece, Kiln kiln, PlannedFiring firing)
    {
        var judgement = new Judgement(tables, firing, piece);
        var c = new PieceCase(tables, kiln, firing, piece);
        foreach (var rule in rules) rule.Judge(c, judgement);
        if (judgement.WorstOfCone > ReasonSeverity.Note) MixUp(c, judgement);
        return judgement;
    }

    /// <summary>True when the piece is simply accepted.</summary>
    public bool Accepts(Piece piece, Kiln kiln, PlannedFiring firing)
    {
        var c = new PieceCase(tables, kiln, firing, piece);
        quiet.Clear();
        foreach (var rule in rules)
        {
            rule.Judge(c, quiet);
            if (quiet.Worst > ReasonSeverity.Note) return false;
        }

        return true;
    }

    /// <summary>How bad the worst of its reasons is.</summary>
    public ReasonSeverity Worst(Piece piece, Kiln kiln, PlannedFiring firing)
    {
        var c = new PieceCase(tables, kiln, firing, piece);
        quiet.Clear();
        foreach (var rule in rules)
        {
            rule.Judge(c, quiet);
            if (quiet.Worst == ReasonSeverity.Refuse) break;
        }

        return quiet.Worst;
    }

    /// <summary>The notes that remain where a piece is simply accepted; null where it is not.</summary>
    public EnumSet<ReasonCode>? NotesWhereAccepted(Piece piece, Kiln kiln, PlannedFiring firing) =>
        Accepts(piece, kiln, firing) ? quiet.Codes : null;

    /// <summary>True when no cone stands against the piece at the cone that the firing's is confused with.</summary>
    public bool FitsOtherCone(Piece piece, Kiln kiln, PlannedFiring firing)
    {
        if (firing.Cone.MixUp is not { } other || other.Order > kiln.MaxOrder) return false;
        // Nobody means a pit at cone 12.
        if (!firing.Needs.Holds(other)) return false;
        var c = new PieceCase(tables, kiln, firing with { Cone = other }, piece);
        return !MarksRule.Questions(c with { Firing = firing }) && Wants(c) && Fits(c);
    }

    // That nothing speaks against a cone is not enough: something in the piece must want it.
    private static bool Wants(PieceCase c)
    {
        var order = c.Firing.Cone.Order;
        if (c.Firing.Kind == FiringKind.Bisque)
            return c.Piece.Body is { } raw && raw.BisqueMin.Order <= order && order <= raw.BisqueMax.Order;
        if (c.Piece.Coats.Any(x => c.Judges(x) && (x.Coat.Melts || x.Coat.IsOverglaze || x.Coat.Kind == CoatKind.Vapour)))
            return true;
        return c.Piece.Body?.Mature is { } mature && mature.Min.Order <= order && order <= mature.Max.Order;
    }

    private void MixUp(PieceCase c, Judgement judgement)
    {
        var (piece, severity) = (c.Piece, judgement.WorstOfCone);
        // Of a mark that is itself in question nothing follows for the firing.
        if (MarksRule.Questions(c)) return;
        if (FitsOtherCone(piece, c.Kiln, c.Firing)) WrongFiring(c, severity, judgement);
        else if (Flipped(piece) is var flipped && flipped is { Body: not null } && Fits(c with { Piece = flipped }))
            WrongMark(c, flipped, severity, judgement);
    }

    private static void WrongFiring(PieceCase c, ReasonSeverity severity, Judgement judgement)
    {
        var (cone, other) = (c.Firing.Cone.Text, c.Firing.Cone.MixUp!.Text);
        judgement.Find(ReasonCode.ConeZeroMixUp, severity)?.Because(LoadRuleIds.SuspectTheZero, c.Piece.Body,
            c.Tables.MixUpCelsius(c.Firing.Cone) is { } apart
                ? Message.Of("loads.cone-mix-up-degrees", ("cone", cone), ("other", other), ("apart", apart))
                : Message.Of("loads.cone-mix-up", ("cone", cone), ("other", other)),
            Message.Of("loads.correct-firing", ("other", other)));
    }

    private static void WrongMark(PieceCase c, Piece flipped, ReasonSeverity severity, Judgement judgement)
    {
        var own = flipped.Coats.Zip(c.Piece.Coats).FirstOrDefault(x => x.First.Coat != x.Second.Coat);
        Material? marked = own.Second is { } wrong ? wrong.Coat : c.Piece.Body;
        var (name, was, now) = own.First is { } coat
            ? (own.Second.Coat.Name, own.Second.Coat.Range, coat.Coat.Range)
            : (c.Piece.Body!.Name, c.Piece.Body.Mature!.Spoken, flipped.Body!.Mature!.Spoken);
        judgement.Find(ReasonCode.ConeZeroMixUp, severity)?.Because(LoadRuleIds.SuspectTheZero, marked,
            c.Tables.MixUpCelsius(c.Firing.Cone) is { } apart
                ? Message.Of("loads.mark-mix-up-degrees", ("name", name), ("was", was), ("now", now), ("apart", apart))
                : Message.Of("loads.mark-mix-up", ("name", name), ("was", was), ("now", now)),
            Message.Of("loads.correct-marks", ("name", name), ("now", now)));
    }

    /// <summary>
    /// The piece with the cones of its caller's own glazes flipped, or else of its own body; null where there is none to flip.
    /// </summary>
    private static Piece? Flipped(Piece piece)
    {
        if (piece.Coats.Any(x => x.Coat.Id is null))
        {
            return piece with
            {
                Coats = [.. piece.Coats.Select(x => x.Coat.Id is null && Flip(x.Coat) is { } flipped ? x with { Coat = flipped } : x)],
            };
        }

        return piece.Body is { Id: null, Mature: { } m } body && Flip(m.Min, m.Best, m.Max) is { } range
            ? piece with { Body = body.With(range) }
            : null;
    }

    private static Coat? Flip(Coat coat) =>
        coat is { Best: { } best, Max: { } max } && Flip(coat.Min, best, max) is { } range ? coat.With(range) : null;

    // 07 … 05 turned over is 7 … 5: the ends change places.
    private static ConeRange? Flip(PotterCone min, PotterCone best, PotterCone max) => (min.MixUp, best.MixUp, max.MixUp) switch
    {
        ({ } a, { } b, { } c) when a.Order <= b.Order && b.Order <= c.Order => new(a, b, c),
        ({ } a, { } b, { } c) when c.Order <= b.Order && b.Order <= a.Order => new(c, b, a),
        _ => null,
    };

    private bool Fits(PieceCase c)
    {
        quiet.Clear();
        foreach (var rule in ConeRules) rule.Judge(c, quiet);
        return quiet.Worst == ReasonSeverity.Note;
    }
}
