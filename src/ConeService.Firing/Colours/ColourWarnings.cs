using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Practice;

namespace ConeService.Firing.Colours;

/// <summary>What may go wrong or hurt, with its cautions; chosen by the typed fields of the cautions.</summary>
/// <param name="catalogue">The colour tables.</param>
/// <param name="cautions">Links to cautions.</param>
internal sealed class ColourWarnings(ColourCatalogue catalogue, CautionIndex cautions)
{
    private const string ElectricKiln = "electric-kiln";
    private const string Reduction = "reduction";
    private const string Salt = "salt";
    private const string Soda = "soda";
    private const string Raku = "raku";

    private static readonly ColourRuleEffect[] Warning =
    [
        ColourRuleEffect.LosesColour, ColourRuleEffect.GivesOffGas, ColourRuleEffect.StainsNeighbours, ColourRuleEffect.MoreFluid,
        ColourRuleEffect.Warning,
    ];

    /// <summary>The words that cautions are chosen by.</summary>
    public static IReadOnlyList<string> AppliesTo { get; } = [ElectricKiln, Reduction, Salt, Soda, Raku];

    /// <summary>A rule and what brings it about.</summary>
    public static Message Because(Interaction rule) => Message.Of(
        "colours.rule-because", ("rule", rule.Name), ("outcome", rule.Outcome.TrimEnd('.')), ("because", rule.Because));

    /// <summary>The warnings of interactions, and of an atmosphere that the kiln is not made for.</summary>
    public IReadOnlyList<ColourWarning> Of(IReadOnlyList<Interaction> interactions, Atmosphere atmosphere, KilnHeat? kiln)
    {
        var found = interactions.Where(i => Warning.Contains(i.Effect))
            .Select(i => new ColourWarning(EnumWords.Word(i.Effect), i.Rule, i.Standing, Because(i), cautions.Links(i.Cautions))).ToList();
        if (kiln == KilnHeat.Electric && atmosphere == Atmosphere.Reduction)
        {
            found.Add(new(
                "reduction-in-electric-kiln", null, RuleStanding.Holds, Message.Of("colours.reduction-in-electric-kiln"),
                cautions.Links(Applying(c => c.AppliesTo.Contains(ElectricKiln) && c.AppliesTo.Contains(Reduction))
                    .Concat(For(Atmosphere.Reduction)))));
        }

        if (atmosphere == Atmosphere.SaltSoda && kiln is not (null or KilnHeat.Vapour))
        {
            found.Add(new(
                "vapour-in-another-kiln", null, RuleStanding.Holds, Message.Of("colours.vapour-in-another-kiln"),
                cautions.Links(For(Atmosphere.SaltSoda))));
        }

        return found;
    }

    /// <summary>Ids of the cautions that an atmosphere brings by itself.</summary>
    public IEnumerable<string> For(Atmosphere atmosphere) => atmosphere switch
    {
        Atmosphere.Reduction => Applying(c => c.AppliesTo.Contains(Reduction) && c.Severity == Severity.Critical),
        Atmosphere.SaltSoda => Applying(c => c.AppliesTo.Contains(Salt) || c.AppliesTo.Contains(Soda)),
        Atmosphere.PostFireReduction => Applying(c => c.AppliesTo.Contains(Raku)),
        _ => [],
    };

    private IEnumerable<string> Applying(Func<CautionRow, bool> applies) => catalogue.Data.Cautions.Where(applies).Select(c => c.Id);
}
