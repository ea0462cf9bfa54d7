using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>The kiln must reach the cone, hold the atmosphere and be made for the kind of firing.</summary>
internal sealed class KilnRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } =
    [
        LoadRuleIds.KilnHighestCone, LoadRuleIds.KilnMadeFor,
        LoadRuleIds.GlazeAtmosphere, LoadRuleIds.VapourKiln, LoadRuleIds.SuspectTheZero,
    ];

    public void Judge(PieceCase c, Judgement judgement) => Judge(c.Tables, c.Kiln, c.Firing, judgement);

    /// <summary>The same for the load as a whole.</summary>
    public static void Judge(LoadTables tables, Kiln kiln, PlannedFiring firing, Judgement judgement)
    {
        var (heat, needs) = (tables.Heat(kiln.Heat), firing.Needs);
        if (firing.Cone.Order > kiln.MaxOrder)
        {
            judgement.Find(ReasonCode.KilnCannotReachCone, ReasonSeverity.Refuse)?.Because(LoadRuleIds.KilnHighestCone, null,
                Message.Of("loads.kiln-highest-cone", ("max", kiln.MaxCone), ("cone", firing.Cone.Text)),
                Message.Of("loads.kiln-for-cone", ("max", kiln.MaxCone), ("cone", firing.Cone.Text)));
            Mark(tables, kiln, firing, judgement);
        }

        else if (kiln.MostDegrees is { } most && tables.EndPoint(firing.Cone) is { } ends && most < ends.Usual)
        {
            judgement.Find(ReasonCode.KilnCannotReachCone, most < ends.Slowest ? ReasonSeverity.Refuse : ReasonSeverity.Review)?.Because(
                LoadRuleIds.KilnHighestCone, null,
                Message.Of(
                    "loads.kiln-highest-temperature",
                    ("most", most), ("cone", firing.Cone.Text), ("usual", ends.Usual), ("slowest", ends.Slowest),
                    ("reach", most < ends.Slowest ? "no" : "slowly")),
                Message.Of("loads.kiln-that-reaches", ("cone", firing.Cone.Text)));
        }

        if (HarmsElements(firing.Kind, kiln.Heat))
        {
            judgement.Find(ReasonCode.KilnCannotHoldAtmosphere, ReasonSeverity.Review)?.Because(LoadRuleIds.KilnMadeFor, null,
                Message.Of("loads.saggar-harms-elements"), Message.Of("loads.reduction-kiln"));
        }

        if (!needs.Heats.Has(kiln.Heat)) Kind(kiln, heat, firing, judgement);
        Atmosphere(kiln, heat, firing, judgement);
        if (!needs.Atmospheres.Has(firing.Atmosphere) && needs.Row.WrongAtmosphere > ReasonSeverity.Note)
        {
            judgement.Find(ReasonCode.AtmosphereMismatch, needs.Row.WrongAtmosphere)?.Because(LoadRuleIds.GlazeAtmosphere, null,
                Message.Of(
                    "loads.kind-in-other-atmosphere",
                    ("kind", needs.Kind), ("firing", needs.Name), ("atmospheres", needs.Atmospheres.Spoken),
                    ("atmosphere", EnumWords.Word(firing.Atmosphere)), ("effect", needs.Row.WrongAtmosphereEffect)),
                Message.Of("loads.fire-in", ("atmospheres", needs.Atmospheres.Spoken)));
        }
    }

    /// <summary>True where what a firing gives off eats the elements of the kiln.</summary>
    internal static bool HarmsElements(FiringKind kind, KilnHeat heat) => kind == FiringKind.Saggar && heat == KilnHeat.Electric;

    // A kiln that is marked 06 and fired to 6 is more often a kiln for cone 6.
    private static void Mark(LoadTables tables, Kiln kiln, PlannedFiring firing, Judgement judgement)
    {
        if (tables.PotterScale.Of(kiln.MaxCone).MixUp is not { } other || firing.Cone.Order > other.Order) return;
        judgement.Find(ReasonCode.ConeZeroMixUp, ReasonSeverity.Review)?.Because(LoadRuleIds.SuspectTheZero, null,
            Message.Of("loads.kiln-mark-mix-up", ("max", kiln.MaxCone), ("other", other.Text)),
            Message.Of("loads.correct-kiln", ("other", other.Text)));
    }

    private static void Atmosphere(Kiln kiln, KilnHeatRow heat, PlannedFiring firing, Judgement judgement)
    {
        var harms = firing.IsReduction && heat.Reduction == KilnReduction.HarmsElements;
        if (!kiln.Atmospheres.Has(firing.Atmosphere))
        {
            var atmosphere = EnumWords.Word(firing.Atmosphere);
            judgement.Find(ReasonCode.KilnCannotHoldAtmosphere, ReasonSeverity.Refuse)?.Because(LoadRuleIds.KilnMadeFor, null,
                harms
                    ? Message.Of(
                        "loads.kiln-holds-no-reduction",
                        ("kiln", heat.Name), ("held", kiln.Atmospheres.Spoken), ("atmosphere", atmosphere))
                    : Message.Of(
                        "loads.kiln-holds-other",
                        ("kiln", heat.Name), ("held", kiln.Atmospheres.Spoken), ("atmosphere", atmosphere)),
                firing.IsReduction
                    ? Message.Of("loads.reduction-kiln-or-oxidation-glaze")
                    : Message.Of("loads.kiln-that-holds", ("atmosphere", atmosphere)));
        }
        else if (harms)
        {
            judgement.Find(ReasonCode.KilnCannotHoldAtmosphere, ReasonSeverity.Review)?.Because(LoadRuleIds.KilnMadeFor, null,
                Message.Of("loads.reduction-harms-elements", ("heat", EnumWords.Word(heat.Id)), ("kiln", heat.Name)),
                Message.Of("loads.reduction-kiln"));
        }
    }

    private static void Kind(Kiln kiln, KilnHeatRow heat, PlannedFiring firing, Judgement judgement)
    {
        var needs = firing.Needs;
        if (kiln.Heat == KilnHeat.Vapour)
        {
            judgement.Find(ReasonCode.VapourKilnOnly, ReasonSeverity.Refuse)?.Because(LoadRuleIds.VapourKiln, null,
                Message.Of("loads.vapour-kiln-for-other", ("kind", needs.Kind), ("firing", needs.Name)),
                Message.Of("loads.kiln-for-heats", ("heats", needs.Heats.Spoken)));
        }
        else if (firing.Kind is FiringKind.Salt or FiringKind.Soda)
        {
            judgement.Find(ReasonCode.VapourKilnOnly, ReasonSeverity.Refuse)?.Because(LoadRuleIds.VapourKiln, null,
                Message.Of("loads.vapour-in-other-kiln", ("kind", needs.Kind), ("firing", needs.Name), ("kiln", heat.Name)),
                Message.Of("loads.vapour-kiln"));
        }
        else
        {
            judgement.Find(ReasonCode.KilnCannotHoldAtmosphere, ReasonSeverity.Refuse)?.Because(LoadRuleIds.KilnMadeFor, null,
                Message.Of(
                    "loads.kiln-not-for-kind",
                    ("kiln", heat.Name), ("kind", needs.Kind), ("firing", needs.Name), ("heats", needs.Heats.Spoken)),
                Message.Of("loads.kiln-for-heats", ("heats", needs.Heats.Spoken)));
        }
    }
}
