using ConeService.Contract.Colours;
using ConeService.Data;
using ConeService.Firing.Practice;

namespace ConeService.Firing.Colour;

/// <summary>What may go wrong or hurt, with its cautions; chosen by the typed fields of the cautions.</summary>
/// <param name="catalogue">The colour tables.</param>
/// <param name="cautions">Links to cautions.</param>
internal sealed class ColourWarnings(ColourCatalogue catalogue, CautionDescriber cautions)
{
    private static readonly ColourRuleEffect[] Warning =
        [ColourRuleEffect.LosesColour, ColourRuleEffect.GivesOffGas, ColourRuleEffect.StainsNeighbours, ColourRuleEffect.MoreFluid, ColourRuleEffect.Warning];

    /// <summary>The warnings of interactions, and of an atmosphere that the kiln is not made for.</summary>
    public IReadOnlyList<ColourWarning> Of(IReadOnlyList<Interaction> interactions, ColourAtmosphere atmosphere, KilnHeat? kiln)
    {
        var found = interactions.Where(i => Warning.Contains(i.Effect)).Select(i => new ColourWarning(
            EnumWords.Word(i.Effect), i.Rule, i.Standing, $"{i.Name}: {i.Outcome.TrimEnd('.')} ({i.Because}).", cautions.Links(i.Cautions))).ToList();
        if (kiln == KilnHeat.Electric && atmosphere == ColourAtmosphere.Reduction)
        {
            found.Add(new(
                "reduction-in-electric-kiln", null, RuleStanding.Holds,
                "An electric kiln has no flame to reduce with: smoke or gas let into it puts carbon monoxide into the room and ages the elements. The colour is answered as if the reduction were had.",
                cautions.Links(Applying(c => c.AppliesTo.Contains("electric-kiln") && c.AppliesTo.Contains("reduction")).Concat(For(ColourAtmosphere.Reduction)))));
        }

        if (atmosphere == ColourAtmosphere.SaltSoda && kiln is not (null or KilnHeat.Vapour))
        {
            found.Add(new(
                "vapour-in-another-kiln", null, RuleStanding.Holds,
                "Salt or soda vapour glazes the kiln and its shelves: it takes a kiln that is kept for it.",
                cautions.Links(For(ColourAtmosphere.SaltSoda))));
        }

        return found;
    }

    /// <summary>Ids of the cautions that an atmosphere brings by itself.</summary>
    public IEnumerable<string> For(ColourAtmosphere atmosphere) => atmosphere switch
    {
        ColourAtmosphere.Reduction => Applying(c => c.AppliesTo.Contains("reduction") && c.Severity == Severity.Critical),
        ColourAtmosphere.SaltSoda => Applying(c => c.AppliesTo.Contains("salt") || c.AppliesTo.Contains("soda")),
        ColourAtmosphere.PostFireReduction => Applying(c => c.AppliesTo.Contains("raku")),
        _ => [],
    };

    private IEnumerable<string> Applying(Func<CautionRow, bool> applies) => catalogue.Data.Cautions.Where(applies).Select(c => c.Id);
}
