using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Colours;

/// <summary>Holds the colour rules against a recipe in an atmosphere. Every condition is data; nothing is read out of words.</summary>
/// <param name="catalogue">The colour tables.</param>
internal sealed class RuleEngine(ColourCatalogue catalogue)
{
    /// <summary>The rules that hold, may hold or are prevented, in the order of their ids.</summary>
    public IReadOnlyList<Interaction> Evaluate(Recipe recipe, Atmosphere atmosphere) =>
    [
        .. catalogue.Data.ColourRules.Where(r => r.Effect != ColourRuleEffect.Statement)
            .Select(r => Evaluate(r, recipe, atmosphere)).OfType<Interaction>(),
    ];

    private Interaction? Evaluate(ColourRuleRow rule, Recipe recipe, Atmosphere atmosphere)
    {
        if (rule.Atmospheres.Count > 0 && !rule.Atmospheres.Contains(atmosphere)) return null;
        if (rule.Bases.Count > 0 && !rule.Bases.Contains(recipe.Base.Id)) return null;
        var present = catalogue.IngredientsOfRule[rule.Id].Select(i => (Row: i, Found: recipe.Find(i.Ingredient))).ToList();
        if (present.Any(p => p.Row.Role == IngredientRole.Needed && p.Found is null)) return null;
        var oneOf = present.Where(p => p.Row.Role == IngredientRole.OneOf).ToList();
        if (oneOf.Count > 0 && oneOf.All(p => p.Found is null)) return null;
        var limit = rule.Limit is { } id ? catalogue.Limits[id] : null;
        if (limit is not null && recipe.Heat is { } heat && !heat.Beyond(limit)) return null;

        var amounts = present.Where(p => p.Found is not null).Select(p => Amount(p.Row, p.Found!)).ToList();
        var decisive = amounts.Where(a => a.Role is IngredientRole.Needed or IngredientRole.OneOf).ToList();
        // With too little of an ingredient only a change of colour is worth telling: it begins before it is complete.
        if (rule.Effect != ColourRuleEffect.ReplacesColour && decisive.Any(a => a.Match == PercentMatch.Below)) return null;
        var prevented = amounts.Where(a => a.Role == IngredientRole.Prevents).ToList();
        var unsure = (limit is not null && recipe.Heat is null)
            || decisive.Any(a => a.Match is PercentMatch.Below or PercentMatch.Above or PercentMatch.NotAsked);
        var wanted = present.Where(p => p is { Row.Role: IngredientRole.Favours, Found: null }).Select(p => p.Row.Ingredient).ToList();
        List<Message> because =
        [
            .. Amounts(decisive), .. Air(rule, atmosphere), .. Heat(limit, recipe.Heat), .. Company(prevented, wanted),
        ];
        return new(
            Rule: rule.Id,
            Name: rule.Rule,
            Effect: rule.Effect,
            Standing: prevented.Count > 0 ? RuleStanding.Prevented : unsure ? RuleStanding.Possible : RuleStanding.Holds,
            Outcome: rule.Outcome,
            ColourWords: rule.ColourWords,
            Reason: rule.Reason,
            Because: because.Count > 0 ? Phrases.Beside(because) : Message.Verbatim(""),
            Amounts: amounts,
            Figures: rule.Figures,
            TemperatureLimit: rule.Limit,
            ShownBy: rule.ShownBy,
            Cautions: rule.Cautions,
            Sources: rule.Sources,
            Confidence: rule.Confidence,
            Note: rule.Note);
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
            Ingredient: row.Ingredient,
            Role: row.Role,
            Origin: found.Origin,
            Percent: found.Percent,
            Min: row.PercentMin,
            Max: row.PercentMax,
            Match: match,
            Sourced: told ? row.PercentConfidence is Confidence.Published or Confidence.Corroborated : null,
            Note: row.Note);
    }

    private static IEnumerable<Message> Amounts(List<RuleAmount> decisive)
    {
        if (decisive.Count > 0) yield return Message.Of("colours.rule-amounts", ("amounts", decisive.Select(Say).ToArray()));
    }

    private static IEnumerable<Message> Air(ColourRuleRow rule, Atmosphere atmosphere)
    {
        if (rule.Atmospheres.Count > 0) yield return Message.Of("colours.in-atmosphere", ("atmosphere", EnumWords.Word(atmosphere)));
    }

    private static IEnumerable<Message> Heat(TemperatureLimitRow? limit, FiringHeat? heat)
    {
        if (limit is null) yield break;
        var effect = limit.Effect.TrimEnd('.');
        yield return heat is null
            ? Message.Of("colours.at-no-cone", ("effect", effect))
            : Message.Of("colours.at-cone", ("cone", heat.Cone.ToString()), ("effect", effect));
    }

    private static IEnumerable<Message> Company(List<RuleAmount> prevented, List<string> wanted)
    {
        if (prevented.Count > 0)
            yield return Message.Of("colours.prevented-by", ("ingredients", Phrases.And(prevented.Select(p => p.Ingredient))));
        if (wanted.Count > 0) yield return Message.Of("colours.better-with", ("ingredients", Phrases.And(wanted)));
    }

    private static Message Say(RuleAmount amount) => Message.Of(
        "colours.rule-amount",
        ("ingredient", amount.Ingredient),
        ("known", amount.Percent is not null ? "percent" : EnumWords.Word(amount.Origin)),
        ("percent", amount.Percent),
        ("match", EnumWords.Word(amount.Match)),
        ("min", amount.Min),
        ("max", amount.Max));
}
