namespace ConeService.Data;

/// <summary>An ingredient that a colour rule needs or forbids.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Ingredient">Id of a colorant or an additive.</param>
/// <param name="Role">needed; one-of (one of these suffices); prevents; favours (wanted, but not decisive).</param>
/// <param name="PercentMin">Least percentage, of the oxide, added to 100 of glaze; blank where none is told, %.</param>
/// <param name="PercentMax">Greatest percentage, %.</param>
/// <param name="PercentConfidence">How far the percentage itself can be trusted, apart from the rule.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ColourRuleIngredientRow(
    string Rule,
    string Ingredient,
    IngredientRole Role,
    decimal? PercentMin,
    decimal? PercentMax,
    Confidence? PercentConfidence,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
