using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Reading;

/// <summary>
/// Reads bodies and glazes of the caller's own by their marks. A mark may say little: what it leaves out is not taken to hold,
/// and the piece goes on with what is known.
/// </summary>
internal sealed class MarkReader(LoadTables tables, FieldReader fields)
{
    // Most clays are bisqued so; guild-loading-notes.
    private const string UsualBisqueMin = "06";
    private const string UsualBisqueMax = "04";

    // What a caller's own glaze may be fired in and go on is not told: whatever takes a glaze.
    private static readonly EnumSet<FiringKind> GlazeFirings =
        new([FiringKind.Glaze, FiringKind.Single, FiringKind.Raku, FiringKind.Salt, FiringKind.Soda, FiringKind.Wood]);

    private static readonly EnumSet<PieceState> OnBisque = new([PieceState.Bisqued]);
    private static readonly char[] Between = ['-', '–', '—', '…', '/'];

    /// <summary>A body of one's own; null with a finding.</summary>
    public Body? Body(OwnBodyRequest own, string at, List<UnknownMaterial> unknown)
    {
        var before = fields.Findings.Count;
        var name = fields.RequiredText(own.Name, fields.At(at, "/name"), "our red clay");
        var bisque = Bisque(own.Bisque, fields.At(at, "/bisque"));
        var (mature, whole) = Range(own.Mature, own.Mark, at, "/mature");
        if (name is null || fields.Findings.Count > before) return null;
        if (!whole) Missing(UnknownAs.MarksOfBody, name, mature, fields.At(at, "/mature"), "/ownBody", unknown);
        if (bisque is null)
        {
            bisque = (tables.PotterScale.Of(UsualBisqueMin), tables.PotterScale.Of(UsualBisqueMax));
            unknown.Add(new(
                UnknownAs.Bisque, name, [],
                Message.Of("loads.bisque-not-told", ("name", name), ("min", UsualBisqueMin), ("max", UsualBisqueMax)))
            {
                Within = "/ownBody",
            });
            fields.Assumed.Add(new(
                fields.At(at, "/bisque"), $"{UsualBisqueMin} to {UsualBisqueMax}", Message.Of("loads.bisque-marks-assumed")));
        }

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
            HoldsWater = mature is null || mature.Best.Order < tables.PotterScale.Of("4").Order
                ? HoldsWater.WhenGlazed
                : HoldsWater.WhenMature,
            ThermalShock = ThermalShock.NotStated,
            Atmospheres = new EnumSet<Atmosphere>(Atmospheres.OfFirings),
        };
    }

    /// <summary>A glaze of one's own; null with a finding, or where nothing is known of its cones.</summary>
    public Coat? Glaze(OwnGlazeRequest own, string at, string within, List<UnknownMaterial> unknown)
    {
        var before = fields.Findings.Count;
        var name = fields.RequiredText(own.Name, fields.At(at, "/name"), "our blue");
        var (cones, whole) = Range(own.Cones, own.Mark, at, "/cones");
        var atmospheres = own.Atmospheres is null
            ? new EnumSet<Atmosphere>(Atmospheres.OfFirings)
            : fields.Set(own.Atmospheres, fields.At(at, "/atmospheres"), Atmospheres.OfFirings);
        if (own.Atmospheres is null)
            fields.Assumed.Add(new(fields.At(at, "/atmospheres"), "any", Message.Of("loads.atmospheres-assumed")));
        if (name is null || fields.Findings.Count > before) return null;
        if (!whole) Missing(UnknownAs.MarksOfCoat, name, cones, fields.At(at, "/cones"), within, unknown);
        return cones is null || atmospheres is null ? null : new Coat
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

    private void Missing(
        UnknownAs what, string name, ConeRange? known, string at, string within, List<UnknownMaterial> unknown)
    {
        unknown.Add(new(what, name, [], known is null
            ? Message.Of("loads.no-marks", ("name", name))
            : Message.Of("loads.marks-incomplete", ("name", name), ("range", known.Spoken)))
        { Within = within });
        fields.Assumed.Add(new(at, known?.Spoken.ToString() ?? "unknown", Message.Of("loads.marks-assumed")));
    }

    private (PotterCone Min, PotterCone Max)? Bisque(OwnBisqueRequest? sent, string at)
    {
        if (sent is null) return null;
        var (min, max) = (fields.Cone(sent.Min, fields.At(at, "/min")), fields.Cone(sent.Max, fields.At(at, "/max")));
        return Rises(min, max, fields.At(at, "/max")) && min is not null && max is not null ? (min, max) : null;
    }

    // The range as far as it is told, and whether all of it is.
    private (ConeRange? Range, bool Whole) Range(OwnRangeRequest? sent, SentText mark, string at, string member)
    {
        if (sent is null) return (mark.IsAbsent ? null : Mark(mark, fields.At(at, "/mark")), false);
        at = fields.At(at, member);
        var (min, max) = (Known(sent.Min, fields.At(at, "/min")), Known(sent.Max, fields.At(at, "/max")));
        var best = Known(sent.Best, fields.At(at, "/best"));
        var rises = Rises(min, best, fields.At(at, "/best")) & Rises(best, max, fields.At(at, "/max"));
        if (best is null) rises &= Rises(min, max, fields.At(at, "/max"));
        if (!rises || (min ?? best ?? max) is null) return (null, false);
        var whole = min is not null && best is not null && max is not null;
        return (new((min ?? best ?? max)!, (best ?? max ?? min)!, (max ?? best ?? min)!), whole);
    }

    private PotterCone? Known(SentText sent, string at) => sent.IsAbsent ? null : fields.Cone(sent, at);

    // “cone 6” on a bag, “5–6” on a jar: what it is sold for, and nothing of how far it goes.
    private ConeRange? Mark(SentText sent, string at)
    {
        if (fields.Text(sent, at, "5-6") is not { } text) return null;
        var parts = text.Split(Between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length is 0 or > 2)
        {
            fields.Add(FindingCodes.ConeUnreadable, at, text, Message.Of("cones.not-text"), [Message.Of("loads.marks-allowed")]);
            return null;
        }

        var (min, max) = (fields.Cone(parts[0], at), fields.Cone(parts[^1], at));
        return min is not null && max is not null && Rises(min, max, at) ? new(min, max, max) : null;
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
