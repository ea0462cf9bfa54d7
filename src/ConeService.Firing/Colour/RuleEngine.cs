using System.Globalization;
using ConeService.Contract.Colours;
using ConeService.Data;

namespace ConeService.Firing.Colour;

/// <summary>Holds the colour rules against a recipe in an atmosphere. Every condition is data; nothing is read out of words.</summary>
/// <param name="catalogue">The colour tables.</param>
internal sealed class RuleEngine(ColourCatalogue catalogue)
{
    /// <summary>The rules that hold, may hold or are prevented, in the order of their ids.</summary>
    public IReadOnlyList<Interaction> Evaluate(Recipe recipe, ColourAtmosphere atmosphere) =>
        [.. catalogue.Data.ColourRules.Where(r => r.Effect != ColourRuleEffect.Statement).Select(r => Evaluate(r, recipe, atmosphere)).OfType<Interaction>()];

    private Interaction? Evaluate(ColourRuleRow rule, Recipe recipe, ColourAtmosphere atmosphere)
    {
        if (rule.Atmospheres.Count > 0 && !rule.Atmospheres.Contains(atmosphere)) return null;
        if (rule.Bases.Count > 0 && !rule.Bases.Contains(recipe.Base.Id)) return null;
        var present = catalogue.IngredientsOfRule[rule.Id].Select(i => (Row: i, Found: recipe.Find(i.Ingredient))).ToList();
        if (present.Any(p => p.Row.Role == IngredientRole.Needed && p.Found is null)) return null;
        if (present.Any(p => p.Row.Role == IngredientRole.OneOf) && !present.Any(p => p is { Row.Role: IngredientRole.OneOf, Found: not null })) return null;
        var limit = rule.Limit is { } id ? catalogue.Limits[id] : null;
        if (limit is not null && recipe.Heat is { } heat && !heat.Beyond(limit)) return null;

        var amounts = present.Where(p => p.Found is not null).Select(p => Amount(p.Row, p.Found!)).ToList();
        var decisive = amounts.Where(a => a.Role is IngredientRole.Needed or IngredientRole.OneOf).ToList();
        // With too little of an ingredient only a change of colour is worth telling: it begins before it is complete.
        if (rule.Effect != ColourRuleEffect.ReplacesColour && decisive.Any(a => a.Match == PercentMatch.Below)) return null;
        var prevented = amounts.Where(a => a.Role == IngredientRole.Prevents).ToList();
        var standing = prevented.Count > 0 ? RuleStanding.Prevented
            : (limit is not null && recipe.Heat is null) || decisive.Any(a => a.Match is PercentMatch.Below or PercentMatch.Above or PercentMatch.NotAsked) ? RuleStanding.Possible
            : RuleStanding.Holds;
        return new(
            rule.Id,
            rule.Rule,
            rule.Effect,
            standing,
            rule.Outcome,
            rule.ColourWords,
            rule.Reason,
            Because(rule, decisive, prevented, limit, recipe, atmosphere, present.Where(p => p is { Row.Role: IngredientRole.Favours, Found: null }).Select(p => p.Row.Ingredient)),
            amounts,
            rule.Figures,
            rule.Limit,
            rule.ShownBy,
            rule.Cautions,
            rule.Sources,
            rule.Confidence,
            rule.Note);
    }

    private static RuleAmount Amount(ColourRuleIngredientRow row, Ingredient found)
    {
        var told = row.PercentMin is not null || row.PercentMax is not null;
        // A base named after an ingredient holds plenty of it.
        var match = !told ? PercentMatch.NotTold
            : found.Origin == IngredientOrigin.Base ? PercentMatch.Inside
            : found.Percent is not { } percent ? PercentMatch.NotAsked
            : percent < row.PercentMin ? PercentMatch.Below
            : percent > row.PercentMax ? PercentMatch.Above
            : PercentMatch.Inside;
        return new(
            row.Ingredient, row.Role, found.Origin, found.Percent, row.PercentMin, row.PercentMax, match,
            told ? row.PercentConfidence is Confidence.Published or Confidence.Corroborated : null, row.Note);
    }

    private static string Because(
        ColourRuleRow rule, List<RuleAmount> decisive, List<RuleAmount> prevented, TemperatureLimitRow? limit, Recipe recipe, ColourAtmosphere atmosphere, IEnumerable<string> wanted)
    {
        var parts = new List<string> { string.Join(", ", decisive.Select(Say)) };
        if (rule.Atmospheres.Count > 0) parts.Add($"in {EnumWords.Word(atmosphere)}");
        if (limit is not null) parts.Add(recipe.Heat is { } heat ? $"at cone {heat.Cone}: {limit.Effect.TrimEnd('.')}" : $"no cone was named: {limit.Effect.TrimEnd('.')}");
        if (prevented.Count > 0) parts.Add("prevented by " + string.Join(" and ", prevented.Select(p => p.Ingredient)));
        if (wanted.ToList() is { Count: > 0 } missing) parts.Add($"better with {string.Join(" and ", missing)}, which was not named");
        return string.Join("; ", parts.Where(p => p.Length > 0));
    }

    private static string Say(RuleAmount amount)
    {
        var percent = amount.Percent is { } p ? string.Create(CultureInfo.InvariantCulture, $" {p:0.###} %") : amount.Origin == IngredientOrigin.Base ? " of the base" : "";
        return amount.Ingredient + percent + amount.Match switch
        {
            PercentMatch.Below => string.Create(CultureInfo.InvariantCulture, $" (below the {amount.Min} % from which it is told)"),
            PercentMatch.Above => string.Create(CultureInfo.InvariantCulture, $" (above the {amount.Max} % to which it is told)"),
            PercentMatch.NotAsked => " (amount not stated)",
            _ => "",
        };
    }
}
