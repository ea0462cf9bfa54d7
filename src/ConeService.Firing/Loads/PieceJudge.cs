using ConeService.Contract.Cones;
using ConeService.Data;
using ConeService.Firing.Loads.Rules;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Judges one piece in one firing by every rule; what its neighbours do to it comes on top.</summary>
internal sealed class PieceJudge(LoadBook book)
{
    // Those that another cone would mend.
    private static readonly IPieceRule[] ConeRules = [new BodyOverRule(), new BodyUnderRule(), new BisqueRangeRule(), new CoatRangeRule()];

    private static readonly IPieceRule[] Rules =
    [
        new DrynessRule(), new OrderRule(), new KilnRule(), new OverglazeRule(), new VapourCoatRule(), .. ConeRules, new ThermalShockRule(),
        new AtmosphereRule(), new FoodRule(), new RoomRule(), new UnknownRule(),
    ];

    private readonly ReasonSink quiet = new(book, quiet: true);

    /// <summary>The reasons, with the lost zero before all.</summary>
    public ReasonSink Judge(Piece piece, Kiln kiln, Firing firing)
    {
        var sink = new ReasonSink(book, quiet: false);
        var c = new PieceCase(book, kiln, firing, piece);
        foreach (var rule in Rules) rule.Judge(c, sink);
        if (sink.WorstOfCone > ReasonSeverity.Note) MixUp(c, sink);
        return sink;
    }

    /// <summary>True when the piece is simply accepted.</summary>
    public bool Accepts(Piece piece, Kiln kiln, Firing firing)
    {
        var c = new PieceCase(book, kiln, firing, piece);
        quiet.Clear();
        foreach (var rule in Rules)
        {
            rule.Judge(c, quiet);
            if (quiet.Worst > ReasonSeverity.Note) return false;
        }

        return true;
    }

    /// <summary>True when no cone stands against the piece at the cone that the firing's is confused with.</summary>
    public bool FitsOtherCone(Piece piece, Kiln kiln, Firing firing)
    {
        if (firing.Cone.MixUp is not { } other || other.Order > kiln.MaxOrder) return false;
        var c = new PieceCase(book, kiln, firing with { Cone = other }, piece);
        return Wants(c) && Fits(c);
    }

    // That nothing speaks against a cone is not enough: something in the piece must want it.
    private static bool Wants(PieceCase c)
    {
        if (c.Firing.Kind == FiringKind.Bisque) return c.Piece.Body is { } raw && raw.BisqueMin.Order <= c.Firing.Cone.Order && c.Firing.Cone.Order <= raw.BisqueMax.Order;
        if (c.Piece.Coats.Any(x => c.Judges(x.Coat) && (x.Coat.Melts || x.Coat.IsOverglaze || x.Coat.Kind == CoatKind.Vapour))) return true;
        return c.Piece.Body?.Mature is { } mature && mature.Min.Order <= c.Firing.Cone.Order && c.Firing.Cone.Order <= mature.Max.Order;
    }

    private void MixUp(PieceCase c, ReasonSink sink)
    {
        var (piece, severity) = (c.Piece, sink.WorstOfCone);
        if (FitsOtherCone(piece, c.Kiln, c.Firing)) Firing(c, severity, sink);
        else if (Flipped(piece) is var flipped && flipped is { Body: not null } && Fits(c with { Piece = flipped })) Marks(c, flipped, severity, sink);
    }

    private void Firing(PieceCase c, ReasonSeverity severity, ReasonSink sink)
    {
        var (cone, other) = (c.Firing.Cone, c.Firing.Cone.MixUp!);
        sink.Add(ReasonCode.ConeZeroMixUp, severity, LoadRuleIds.SuspectTheZero, c.Piece.Body,
            $"Is the cone right? The firing is for cone {cone}, and this piece fits cone {other}: the two differ by a zero{Apart(cone)}.", $"If cone {other} was meant, correct the firing.");
    }

    private void Marks(PieceCase c, Piece flipped, ReasonSeverity severity, ReasonSink sink)
    {
        var own = flipped.Coats.Zip(c.Piece.Coats).FirstOrDefault(x => x.First.Coat != x.Second.Coat);
        var (name, was, now) = own.First is { } coat
            ? (own.Second.Coat.Name, own.Second.Coat.Range, coat.Coat.Range)
            : (c.Piece.Body!.Name, c.Piece.Body.Mature!.ToString(), flipped.Body!.Mature!.ToString());
        sink.Add(ReasonCode.ConeZeroMixUp, severity, LoadRuleIds.SuspectTheZero, null,
            $"Is the mark on {name} right? It says {was}; as {now} it would fit this firing. A zero makes the difference{Apart(c.Firing.Cone)}.", $"If {now} was meant, correct the marks of {name}.");
    }

    private string Apart(ConeMark cone) => book.MixUpCelsius(cone) is { } apart ? System.FormattableString.Invariant($", which is {apart:0} °C") : "";

    /// <summary>The piece with the cones of its caller's own glazes flipped, or else of its own body; null where there is none to flip.</summary>
    private static Piece? Flipped(Piece piece)
    {
        if (piece.Coats.Any(x => x.Coat.Id is null))
        {
            var coats = piece.Coats.Select(x => x.Coat.Id is null && Flip(x.Coat) is { } flipped ? x with { Coat = flipped } : x).ToList();
            return piece with { Coats = coats };
        }

        return piece.Body is { Id: null, Mature: { } m } body && Flip(m.Min, m.Best, m.Max) is { } range ? piece with { Body = body.With(range) } : null;
    }

    private static Coat? Flip(Coat coat) => coat is { Best: { } best, Max: { } max } && Flip(coat.Min, best, max) is { } range ? coat.With(range) : null;

    // 07 … 05 turned over is 7 … 5: the ends change places.
    private static ConeRange? Flip(ConeMark min, ConeMark best, ConeMark max) => (min.MixUp, best.MixUp, max.MixUp) switch
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
