using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>What several ingredients, the heat or the atmosphere do together.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Name">The rule in a few words.</param>
/// <param name="Effect">What it does.</param>
/// <param name="Standing">Whether it holds here.</param>
/// <param name="Outcome">What happens.</param>
/// <param name="ColourWords">Colours of the outcome.</param>
/// <param name="Reason">Why, as the trade explains it.</param>
/// <param name="Because">What in the question brings it about, or keeps it from holding.</param>
/// <param name="Amounts">The ingredients with what is told of their amounts.</param>
/// <param name="Figures">Amounts and temperatures of the rule in words.</param>
/// <param name="TemperatureLimit">Id of the temperature limit beyond which it holds.</param>
/// <param name="ShownBy">Ids of the colour notes that show the outcome.</param>
/// <param name="Cautions">Ids of the cautions that go with it.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Confidence">How far the rule can be trusted; amounts have their own.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record Interaction(
    string Rule,
    string Name,
    ColourRuleEffect Effect,
    RuleStanding Standing,
    string Outcome,
    IReadOnlyList<string> ColourWords,
    string? Reason,
    Message Because,
    IReadOnlyList<RuleAmount> Amounts,
    string? Figures,
    string? TemperatureLimit,
    IReadOnlyList<string> ShownBy,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note);

/// <summary>An ingredient of a rule beside that of the recipe.</summary>
/// <param name="Ingredient">Id of a colorant or an additive.</param>
/// <param name="Role">What it is to the rule.</param>
/// <param name="Origin">Whence it is known to be in the glaze.</param>
/// <param name="Percent">Percentage of its oxide; null where not stated.</param>
/// <param name="Min">Least percentage told.</param>
/// <param name="Max">Greatest percentage told.</param>
/// <param name="Match">How it fits.</param>
/// <param name="Sourced">Whether a source that was seen prints the percentage itself; null where none is told.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record RuleAmount(
    string Ingredient,
    IngredientRole Role,
    IngredientOrigin Origin,
    decimal? Percent,
    decimal? Min,
    decimal? Max,
    PercentMatch Match,
    bool? Sourced,
    string? Note);

/// <summary>Whether a rule holds for a recipe.</summary>
public enum RuleStanding
{
    /// <summary>It holds.</summary>
    Holds,

    /// <summary>It may hold: an amount is not stated or outside what is told, or no cone was named.</summary>
    Possible,

    /// <summary>Another ingredient keeps it from holding.</summary>
    Prevented,
}
