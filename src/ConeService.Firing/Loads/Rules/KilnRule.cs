using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>The kiln must reach the cone, hold the atmosphere and be made for the kind of firing.</summary>
internal sealed class KilnRule : IPieceRule
{
    public void Judge(PieceCase c, ReasonSink into) => Judge(c.Book, c.Kiln, c.Firing, into);

    /// <summary>The same for the load as a whole.</summary>
    public static void Judge(LoadBook book, Kiln kiln, Firing firing, ReasonSink into)
    {
        var (heat, needs) = (book.Heat(kiln.Heat), firing.Needs);
        if (firing.Cone.Order > kiln.MaxOrder)
        {
            into.Add(ReasonCode.KilnCannotReachCone, ReasonSeverity.Refuse, LoadRuleIds.KilnHighestCone, null,
                $"This kiln is made for cone {kiln.MaxCone} at most; the firing goes to cone {firing.Cone}.", $"Use a kiln for cone {firing.Cone}, or ware and glaze for cone {kiln.MaxCone} or less.");
        }

        if (!needs.Heats.Has(kiln.Heat)) Kind(kiln, heat, firing, into);
        if (!kiln.Atmospheres.Has(firing.Atmosphere))
        {
            into.Add(ReasonCode.KilnCannotHoldAtmosphere, ReasonSeverity.Refuse, LoadRuleIds.KilnMadeFor, null,
                $"This {heat.Name} holds {kiln.Atmospheres}, not {EnumWords.Word(firing.Atmosphere)}.{(firing.IsReduction && heat.Reduction == KilnReduction.HarmsElements ? " Reduction shortens the life of electric elements." : "")}",
                $"{(firing.IsReduction ? "Use a gas or wood kiln, or a glaze for oxidation." : $"Use a kiln that holds {EnumWords.Word(firing.Atmosphere)}.")}");
        }
        else if (firing.IsReduction && heat.Reduction == KilnReduction.HarmsElements)
        {
            into.Add(ReasonCode.KilnCannotHoldAtmosphere, ReasonSeverity.Review, LoadRuleIds.KilnMadeFor, null,
                $"Reduction in {Sentences.WithArticle(heat.Name)} shortens the life of its elements and brings carbon monoxide into the room.", $"Use a gas or wood kiln.");
        }

        if (!needs.Atmospheres.Has(firing.Atmosphere) && needs.Row.WrongAtmosphere > ReasonSeverity.Note)
        {
            into.Add(ReasonCode.AtmosphereMismatch, needs.Row.WrongAtmosphere, LoadRuleIds.GlazeAtmosphere, null,
                $"{Sentences.Capital(needs.AName)} is fired in {needs.Atmospheres}, not {EnumWords.Word(firing.Atmosphere)}. {needs.Row.WrongAtmosphereEffect}", $"Fire it in {needs.Atmospheres}.");
        }
    }

    private static void Kind(Kiln kiln, KilnHeatRow heat, Firing firing, ReasonSink into)
    {
        if (kiln.Heat == KilnHeat.Vapour)
        {
            into.Add(ReasonCode.VapourKilnOnly, ReasonSeverity.Refuse, LoadRuleIds.VapourKiln, null,
                $"This kiln is kept for salt and soda: the vapour in its bricks would glaze everything in {firing.Needs.AName}.", $"Use a kiln for {firing.Needs.Heats}.");
        }
        else if (firing.Kind is FiringKind.Salt or FiringKind.Soda)
        {
            into.Add(ReasonCode.VapourKilnOnly, ReasonSeverity.Refuse, LoadRuleIds.VapourKiln, null,
                $"{Sentences.Capital(firing.Needs.AName)} belongs into a kiln kept for salt or soda: in this {heat.Name} the vapour eats bricks, shelves and elements, and glazes all that is fired later.", $"Use a vapour kiln.");
        }
        else
        {
            into.Add(ReasonCode.KilnCannotHoldAtmosphere, ReasonSeverity.Refuse, LoadRuleIds.KilnMadeFor, null,
                $"This {heat.Name} is not for {firing.Needs.AName}: it needs {firing.Needs.Heats}.", $"Use a kiln for {firing.Needs.Heats}.");
        }
    }
}
