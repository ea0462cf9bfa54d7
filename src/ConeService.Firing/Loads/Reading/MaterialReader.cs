using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Reads bodies and coats: by id, or as described by the caller.</summary>
internal sealed class MaterialReader(LoadBook book, FieldReader fields)
{
    // What a caller's own glaze may be fired in and go on is not told: whatever takes a glaze.
    private static readonly WordSet<FiringKind> GlazeFirings = new([FiringKind.Glaze, FiringKind.Single, FiringKind.Raku, FiringKind.Salt, FiringKind.Soda, FiringKind.Wood]);
    private static readonly WordSet<PieceState> OnBisque = new([PieceState.Bisqued]);
    private static readonly WordSet<Fume> SpoilsTin = new([Fume.Chrome, Fume.Copper]);

    /// <summary>The body; null with an unknown material or a finding.</summary>
    public Body? Body(SentText id, OwnBodyRequest? own, string at, List<UnknownMaterial> unknown)
    {
        if (own is not null && !id.IsAbsent)
        {
            fields.Add("material-ambiguous", at + "/ownBody", null, "The piece names a body and describes one of its own: which is it made of?", ["body", "ownBody"]);
            return null;
        }

        if (own is not null) return Own(own, at + "/ownBody");
        if (fields.Text(id, at + "/body", "red-earthenware") is not { } name) return null;
        if (book.Shelf.FindBody(name) is { } body)
        {
            if (body.Mature is null) unknown.Add(new("The base clay", name, []));
            return body;
        }

        unknown.Add(new("The body", name, book.Shelf.NearBodies(name)));
        return null;
    }

    /// <summary>The coats that are known.</summary>
    public List<CoatOnPiece> Coats(IReadOnlyList<CoatRequest?>? sent, string at, List<UnknownMaterial> unknown)
    {
        var coats = new List<CoatOnPiece>(sent?.Count ?? 0);
        for (var i = 0; i < sent?.Count; i++)
        {
            var field = FieldReader.Item(at + "/coats", i);
            if (sent[i] is not { } request) fields.Missing(field, ["an object with glaze or ownGlaze"]);
            else if (Coat(request, field, unknown) is { } coat) coats.Add(coat);
        }

        return coats;
    }

    private CoatOnPiece? Coat(CoatRequest request, string at, List<UnknownMaterial> unknown)
    {
        var contains = request.Contains is null ? default : fields.Words<Fume>(request.Contains, at + "/contains") ?? default;
        Coat? coat;
        if (request.OwnGlaze is { } own)
        {
            if (!request.Glaze.IsAbsent) fields.Add("material-ambiguous", at + "/ownGlaze", null, "The coat names a glaze and describes one of its own: which is it?", ["glaze", "ownGlaze"]);
            coat = Own(own, at + "/ownGlaze");
        }
        else if (fields.Text(request.Glaze, at + "/glaze", "celadon") is { } name)
        {
            coat = book.Shelf.FindCoat(name);
            if (coat is null) unknown.Add(new("The coat", name, book.Shelf.NearCoats(name)));
        }
        else
        {
            coat = null;
        }

        return coat is null ? null : new(coat, coat.GivesOff.With(contains), contains.Has(Fume.Tin) ? coat.SpoiledBy.With(SpoilsTin) : coat.SpoiledBy);
    }

    private Body? Own(OwnBodyRequest own, string at)
    {
        var name = fields.Text(own.Name, at + "/name", "our red clay");
        var (bisqueMin, bisqueMax) = (fields.Cone(own.BisqueMin, at + "/bisqueMin"), fields.Cone(own.BisqueMax, at + "/bisqueMax"));
        var (min, best, max) = (fields.Cone(own.MatureMin, at + "/matureMin"), fields.Cone(own.MatureBest, at + "/matureBest"), fields.Cone(own.MatureMax, at + "/matureMax"));
        var rises = Rises(bisqueMin, bisqueMax, at + "/bisqueMax") & Rises(min, best, at + "/matureBest") & Rises(best, max, at + "/matureMax");
        return name is null || bisqueMin is null || bisqueMax is null || min is null || best is null || max is null || !rises ? null : new Body
        {
            Id = null,
            Name = name,
            Sources = [],
            Confidence = null,
            Cautions = [],
            BisqueMin = bisqueMin,
            BisqueMax = bisqueMax,
            Mature = new(min, best, max),
            Underfired = "Porous and weak, it leaks and crazes later.",
            Overfired = "It can warp, bloat and in the end melt onto the shelf; how soon is not told.",
            HoldsWater = best.Order < book.Marks.Of("4").Order ? HoldsWater.WhenGlazed : HoldsWater.WhenMature,
            ThermalShock = ThermalShock.NotStated,
            Atmospheres = new WordSet<Atmosphere>(Atmospheres.OfFirings),
        };
    }

    private Coat? Own(OwnGlazeRequest own, string at)
    {
        var name = fields.Text(own.Name, at + "/name", "our blue");
        var (min, best, max) = (fields.Cone(own.ConeMin, at + "/coneMin"), fields.Cone(own.ConeBest, at + "/coneBest"), fields.Cone(own.ConeMax, at + "/coneMax"));
        var rises = Rises(min, best, at + "/coneBest") & Rises(best, max, at + "/coneMax");
        var atmospheres = own.Atmospheres is null ? new WordSet<Atmosphere>(Atmospheres.OfFirings) : fields.Words(own.Atmospheres, at + "/atmospheres", Atmospheres.OfFirings);
        if (own.Atmospheres is null) fields.Assumed.Add(new(at + "/atmospheres", "any", "The glaze names no atmospheres; it is taken to suit any."));
        return name is null || min is null || best is null || max is null || atmospheres is null || !rises ? null : new Coat
        {
            Id = null,
            Name = name,
            Sources = [],
            Confidence = null,
            Cautions = [],
            Kind = CoatKind.Glaze,
            Min = min,
            Best = best,
            Max = max,
            Atmospheres = atmospheres.Value,
            WrongAtmosphere = ReasonSeverity.Refuse,
            FiredIn = GlazeFirings,
            AppliedOn = OnBisque,
            Underfired = "Dry, rough and unmelted.",
            Overfired = "It runs, and blisters.",
            RunRisk = RunRisk.Medium,
            Food = CoatFood.LeachTest,
        };
    }

    private bool Rises(ConeMark? lower, ConeMark? upper, string field)
    {
        if (lower is null || upper is null || lower.Order <= upper.Order) return true;
        // 05 … 07 written upside down is often 5 … 7 with zeros that do not belong there.
        var other = lower.MixUp is { } a && upper.MixUp is { } b && a.Order <= b.Order ? $"cone {a} to {b}, or {upper} to {lower}" : $"{upper} to {lower}";
        fields.Add("range-inverted", field, upper.Text, $"Cone {upper} is cooler than cone {lower}, which stands below it: the range is upside down.", [$"a cone from {lower} up"],
            $"Meant was probably {other}: with a zero in front, the larger number is the cooler cone.");
        return false;
    }
}
