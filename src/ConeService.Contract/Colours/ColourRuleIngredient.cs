using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>An ingredient that a colour rule needs or forbids.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Ingredient">Id of a colorant or an additive.</param>
/// <param name="Role">needed; one-of (one of these suffices); prevents; favours (wanted, but not decisive).</param>
/// <param name="PercentMin">Least percentage, of the oxide, added to 100 of glaze; null where none is told, %.</param>
/// <param name="PercentMax">Greatest percentage, %.</param>
/// <param name="PercentConfidence">How far the percentage itself can be trusted, apart from the rule.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record ColourRuleIngredient(
    string Rule,
    string Ingredient,
    IngredientRole Role,
    [property: RangeOf("percentRange")] decimal? PercentMin,
    decimal? PercentMax,
    Confidence? PercentConfidence,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("colour-rule-ingredients", $"{Rule}{TableAddress.Between}{Ingredient}");
}
