using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// Each coat in its atmosphere, each body where it is used, each kind of firing as it is fired. Neutral lies between: a coat
/// that needs oxidation or reduction is then for whoever fires to judge.
/// </summary>
internal sealed class AtmosphereRule : IPieceRule
{
    public void Judge(PieceCase c, ReasonSink into)
    {
        // The fire in the bin or the box decides there, not that in the kiln.
        if (c.Firing.Kind is FiringKind.Raku or FiringKind.Pit or FiringKind.Saggar) return;
        var atmosphere = c.Firing.Atmosphere;
        if (c.Piece.Body is { } body && !body.Atmospheres.Has(atmosphere) && c.Firing.Kind != FiringKind.Overglaze)
        {
            into.Add(ReasonCode.AtmosphereMismatch, ReasonSeverity.Review, LoadRuleIds.GlazeAtmosphere, body,
                $"{body.Capital} is not used in {EnumWords.Word(atmosphere)}: nothing is known of how it turns out.", $"Fire it in {body.Atmospheres}.");
        }

        foreach (var item in c.Piece.Coats)
        {
            if (c.Judges(item.Coat) && !item.Coat.Atmospheres.Has(atmosphere)) Judge(c, item.Coat, into);
        }
    }

    private static void Judge(PieceCase c, Coat coat, ReasonSink into)
    {
        var severity = c.Firing.Atmosphere == Atmosphere.Neutral && coat.WrongAtmosphere == ReasonSeverity.Refuse ? ReasonSeverity.Review : coat.WrongAtmosphere;
        into.Add(ReasonCode.AtmosphereMismatch, severity, LoadRuleIds.GlazeAtmosphere, coat,
            $"{coat.Capital} is made for {coat.Atmospheres}; this firing is in {EnumWords.Word(c.Firing.Atmosphere)}. {coat.WrongAtmosphereEffect}",
            $"Book {Sentences.WithArticle(coat.Atmospheres.ToString())} firing at {coat.Range}{Kiln(coat)}{(coat.Alternative is { } other ? $", or use {other} for {EnumWords.Word(c.Firing.Atmosphere)}" : "")}.");
        var held = c.Kiln.Atmospheres;
        if (coat.Atmospheres.Overlaps(held) || severity != ReasonSeverity.Refuse) return;
        into.Add(ReasonCode.KilnCannotHoldAtmosphere, severity, LoadRuleIds.KilnMadeFor, coat,
            $"This {c.Book.Heat(c.Kiln.Heat).Name} holds {held} only, so no firing in it suits {coat.Name}.", $"Another kiln that holds {coat.Atmospheres} is needed.");
    }

    private static string Kiln(Coat coat) =>
        coat.Atmospheres.Has(Atmosphere.Oxidation) ? "" : coat.IsOverglaze ? " in a gas kiln" : " in a gas or wood kiln";
}
