using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Reads bodies and coats: by id, or as described by the caller.</summary>
internal sealed class MaterialReader(LoadTables tables, FieldReader fields)
{
    // What a caller's own glaze may be fired in and go on is not told: whatever takes a glaze.
    private static readonly EnumSet<FiringKind> GlazeFirings =
        new([FiringKind.Glaze, FiringKind.Single, FiringKind.Raku, FiringKind.Salt, FiringKind.Soda, FiringKind.Wood]);

    private static readonly EnumSet<PieceState> OnBisque = new([PieceState.Bisqued]);
    private static readonly EnumSet<Fume> SpoilsTin = new([Fume.Chrome, Fume.Copper]);

    /// <summary>The body; null with an unknown material or a finding.</summary>
    public Body? Body(SentText id, OwnBodyRequest? own, string at, List<UnknownMaterial> unknown)
    {
        if (own is not null && !id.IsAbsent)
        {
            fields.Add(
                FindingCodes.MaterialAmbiguous, at + "/ownBody", null,
                Message.Of("loads.body-ambiguous"), Message.Verbatim(["body", "ownBody"]));
            return null;
        }

        if (own is not null) return Own(own, at + "/ownBody");
        if (fields.RequiredText(id, at + "/body", "red-earthenware") is not { } name) return null;
        if (tables.Materials.RenamedBody(name, at + "/body") is { } renamed)
        {
            fields.Add(renamed);
            return null;
        }

        if (tables.Materials.FindBody(name) is { } body)
        {
            if (body.Mature is null) unknown.Add(new(UnknownAs.BaseClay, name, []));
            return body;
        }

        unknown.Add(new(UnknownAs.Body, name, tables.Materials.NearBodies(name)));
        return null;
    }

    /// <summary>The coats that are known.</summary>
    public List<CoatOnPiece> Coats(IReadOnlyList<CoatRequest?>? sent, string at, List<UnknownMaterial> unknown)
    {
        var coats = new List<CoatOnPiece>(sent?.Count ?? 0);
        for (var i = 0; i < sent?.Count; i++)
        {
            var field = FieldReader.Item(at + "/coats", i);
            if (sent[i] is not { } request) fields.Missing(field, [Message.Of("loads.coat-object")]);
            else if (Coat(request, field, unknown) is { } coat) coats.Add(coat);
        }

        return coats;
    }

    private CoatOnPiece? Coat(CoatRequest request, string at, List<UnknownMaterial> unknown)
    {
        var contains = request.Contains is null ? default : fields.Set<Fume>(request.Contains, at + "/contains") ?? default;
        Coat? coat;
        if (request.OwnGlaze is { } own)
        {
            if (!request.Glaze.IsAbsent)
            {
                fields.Add(
                    FindingCodes.MaterialAmbiguous, at + "/ownGlaze", null,
                    Message.Of("loads.coat-ambiguous"), Message.Verbatim(["glaze", "ownGlaze"]));
            }

            coat = Own(own, at + "/ownGlaze");
        }
        else if (fields.RequiredText(request.Glaze, at + "/glaze", "celadon") is { } name)
        {
            coat = tables.Materials.FindCoat(name);
            if (coat is null && tables.Materials.RenamedCoat(name, at + "/glaze") is { } renamed) fields.Add(renamed);
            else if (coat is null) unknown.Add(new(UnknownAs.Coat, name, tables.Materials.NearCoats(name)));
        }
        else
        {
            coat = null;
        }

        if (coat is null) return null;
        var spoiledBy = contains.Has(Fume.Tin) ? coat.SpoiledBy.With(SpoilsTin) : coat.SpoiledBy;
        return new(coat, coat.GivesOff.With(contains), spoiledBy);
    }

    private Body? Own(OwnBodyRequest own, string at)
    {
        var name = fields.RequiredText(own.Name, at + "/name", "our red clay");
        var bisque = Bisque(own.Bisque, at + "/bisque");
        var mature = Range(own.Mature, at + "/mature");
        if (name is null || bisque is null || mature is null) return null;
        return new Body
        {
            Id = null,
            Name = name,
            Sources = [],
            Confidence = null,
            Cautions = [],
            BisqueMin = bisque.Value.Min,
            BisqueMax = bisque.Value.Max,
            Mature = mature,
            Underfired = Message.Of("loads.own-body-underfired"),
            Overfired = Message.Of("loads.own-body-overfired"),
            HoldsWater = mature.Best.Order < tables.PotterScale.Of("4").Order ? HoldsWater.WhenGlazed : HoldsWater.WhenMature,
            ThermalShock = ThermalShock.NotStated,
            Atmospheres = new EnumSet<Atmosphere>(Atmospheres.OfFirings),
        };
    }

    private Coat? Own(OwnGlazeRequest own, string at)
    {
        var name = fields.RequiredText(own.Name, at + "/name", "our blue");
        var cones = Range(own.Cones, at + "/cones");
        var atmospheres = own.Atmospheres is null
            ? new EnumSet<Atmosphere>(Atmospheres.OfFirings)
            : fields.Set(own.Atmospheres, at + "/atmospheres", Atmospheres.OfFirings);
        if (own.Atmospheres is null)
            fields.Assumed.Add(new(at + "/atmospheres", "any", Message.Of("loads.atmospheres-assumed")));
        return name is null || cones is null || atmospheres is null ? null : new Coat
        {
            Id = null,
            Name = name,
            Sources = [],
            Confidence = null,
            Cautions = [],
            Kind = CoatKind.Glaze,
            Min = cones.Min,
            Best = cones.Best,
            Max = cones.Max,
            Atmospheres = atmospheres.Value,
            WrongAtmosphere = ReasonSeverity.Refuse,
            FiredIn = GlazeFirings,
            AppliedOn = OnBisque,
            Underfired = Message.Of("loads.own-glaze-underfired"),
            Overfired = Message.Of("loads.own-glaze-overfired"),
            RunRisk = RunRisk.Medium,
            Food = CoatFood.LeachTest,
        };
    }

    private (PotterCone Min, PotterCone Max)? Bisque(OwnBisqueRequest? sent, string at)
    {
        if (sent is null)
        {
            fields.Missing(at, [Message.Verbatim("{\"min\":\"06\",\"max\":\"04\"}")]);
            return null;
        }

        var (min, max) = (fields.Cone(sent.Min, at + "/min"), fields.Cone(sent.Max, at + "/max"));
        return Rises(min, max, at + "/max") && min is not null && max is not null ? (min, max) : null;
    }

    private ConeRange? Range(OwnRangeRequest? sent, string at)
    {
        if (sent is null)
        {
            fields.Missing(at, [Message.Verbatim("{\"min\":\"5\",\"best\":\"6\",\"max\":\"7\"}")]);
            return null;
        }

        var (min, max) = (fields.Cone(sent.Min, at + "/min"), fields.Cone(sent.Max, at + "/max"));
        var best = fields.Cone(sent.Best, at + "/best");
        var rises = Rises(min, best, at + "/best") & Rises(best, max, at + "/max");
        return rises && min is not null && best is not null && max is not null ? new(min, best, max) : null;
    }

    private bool Rises(PotterCone? lower, PotterCone? upper, string field)
    {
        if (lower is null || upper is null || lower.Order <= upper.Order) return true;
        // 05 … 07 written upside down is often 5 … 7 with zeros that do not belong there.
        var (low, high) = (lower.Text, upper.Text);
        var meant = lower.MixUp is { } a && upper.MixUp is { } b && a.Order <= b.Order
            ? Message.Of("loads.range-inverted-or-zeros", ("min", a.Text), ("max", b.Text), ("lower", low), ("upper", high))
            : Message.Of("loads.range-inverted-meant", ("lower", low), ("upper", high));
        fields.Add(
            FindingCodes.RangeInverted, field, high, Message.Of("loads.range-inverted", ("lower", low), ("upper", high)),
            [Message.Of("loads.cone-from", ("lower", low))], meant);
        return false;
    }
}
