using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// Each coat in its atmosphere, each body where it is used, each kind of firing as it is fired. Neutral lies between: a coat
/// that needs oxidation or reduction is then for whoever fires to judge.
/// </summary>
internal sealed class AtmosphereRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.GlazeAtmosphere, LoadRuleIds.KilnMadeFor];

    public void Judge(PieceCase c, Judgement judgement)
    {
        // The fire in the bin or the box decides there, not that in the kiln.
        if (c.Firing.Kind is FiringKind.Raku or FiringKind.Pit or FiringKind.Saggar) return;
        var atmosphere = c.Firing.Atmosphere;
        if (c.Piece.Body is { } body && !body.Atmospheres.Has(atmosphere) && c.Firing.Kind != FiringKind.Overglaze)
        {
            judgement.Find(ReasonCode.AtmosphereMismatch, ReasonSeverity.Review)?.Because(LoadRuleIds.GlazeAtmosphere, body,
                Message.Of("loads.body-in-other-atmosphere", ("body", body.NameFirst), ("atmosphere", EnumWords.Word(atmosphere))),
                Message.Of("loads.fire-in", ("atmospheres", body.Atmospheres.Spoken)));
        }

        foreach (var item in c.Piece.Coats)
        {
            if (c.Judges(item) && !item.Coat.Atmospheres.Has(atmosphere)) Judge(c, item.Coat, judgement);
        }
    }

    private static void Judge(PieceCase c, Coat coat, Judgement judgement)
    {
        var severity = c.Firing.Atmosphere == Atmosphere.Neutral && coat.WrongAtmosphere == ReasonSeverity.Refuse
            ? ReasonSeverity.Review
            : coat.WrongAtmosphere;
        judgement.Find(ReasonCode.AtmosphereMismatch, severity)?.Because(LoadRuleIds.GlazeAtmosphere, coat,
            Message.Of(
                "loads.coat-in-other-atmosphere",
                ("coat", coat.NameFirst),
                ("atmospheres", coat.Atmospheres.Spoken),
                ("atmosphere", EnumWords.Word(c.Firing.Atmosphere)),
                ("effect", coat.WrongAtmosphereEffect)),
            Instead(c, coat));
        if (coat.Atmospheres.Overlaps(c.Kiln.Atmospheres) || severity != ReasonSeverity.Refuse) return;
        judgement.Find(ReasonCode.KilnCannotHoldAtmosphere, severity)?.Because(LoadRuleIds.KilnMadeFor, coat,
            Message.Of(
                "loads.kiln-never-suits-coat",
                ("kiln", c.Tables.Heat(c.Kiln.Heat).Name),
                ("held", c.Kiln.Atmospheres.Spoken),
                ("coat", coat.Name)),
            Message.Of("loads.kiln-that-holds-needed", ("atmospheres", coat.Atmospheres.Spoken)));
    }

    private static Message Instead(PieceCase c, Coat coat)
    {
        // The first of several atmospheres stands before the word firing and decides its article.
        var first = EnumWords.Word(coat.Atmospheres.Items().First());
        var kiln = coat.Atmospheres.Has(Atmosphere.Oxidation) ? "any" : coat.IsOverglaze ? "gas" : "gas-or-wood";
        return coat.Alternative is null
            ? Message.Of(
                "loads.book-atmosphere",
                ("first", first), ("atmospheres", coat.Atmospheres.Spoken), ("range", coat.Range), ("kiln", kiln))
            : Message.Of(
                "loads.book-atmosphere-or-use",
                ("first", first), ("atmospheres", coat.Atmospheres.Spoken), ("range", coat.Range), ("kiln", kiln),
                ("alternative", coat.Alternative), ("atmosphere", EnumWords.Word(c.Firing.Atmosphere)));
    }
}
