using ConeService.Contract.Answers;
using ConeService.Contract.Equations;
using ConeService.Contract.Practice;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>The colours of one colorant, or every colour of a kind.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Question">The question that was answered.</param>
/// <param name="Answers">One for each atmosphere asked for; oxidation and reduction where none was.</param>
/// <param name="Cautions">The cautions of the colorants and atmospheres.</param>
/// <param name="FoodContact">Only a leach test tells.</param>
/// <param name="Notices">What swatches are; who decides.</param>
/// <param name="Sources">Ids of the sources of all answers.</param>
/// <param name="Assumed">What the caller left out.</param>
/// <param name="Confidence">The weakest of the colours answered; null where no source covers any of them, and in lists.</param>
public sealed record ColourAnswer(
    string DatasetVersion,
    ColourQuestion Question,
    IReadOnlyList<ResolvedColour> Answers,
    IReadOnlyList<CautionLink> Cautions,
    Message FoodContact,
    IReadOnlyList<Message> Notices,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed,
    Confidence? Confidence) : IComputed
{
    Address IComputed.Explain => EquationIds.Address(EquationIds.ColourOfARecipe);
}

/// <summary>The colour of a recipe.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Question">The question that was answered.</param>
/// <param name="Asked">The colour in the atmosphere asked for; null where none was.</param>
/// <param name="Contrast">The same recipe in oxidation and in reduction.</param>
/// <param name="Cautions">The cautions of the colorants and atmospheres.</param>
/// <param name="FoodContact">Only a leach test tells.</param>
/// <param name="FoodContactLimits">The limits in use, each with jurisdiction.</param>
/// <param name="Notices">What swatches are; who decides.</param>
/// <param name="Sources">Ids of the sources of all answers.</param>
/// <param name="Assumed">What the caller left out.</param>
/// <param name="Confidence">The weakest of the colours answered; null where no source covers any of them, and in lists.</param>
public sealed record ColourResolution(
    string DatasetVersion,
    ColourQuestion Question,
    ResolvedColour? Asked,
    ColourContrast Contrast,
    IReadOnlyList<CautionLink> Cautions,
    Message FoodContact,
    IReadOnlyList<FoodContactLimit> FoodContactLimits,
    IReadOnlyList<Message> Notices,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed,
    Confidence? Confidence) : IComputed
{
    Address IComputed.Explain => EquationIds.Address(EquationIds.ColourOfARecipe);
}

/// <summary>One recipe in two atmospheres.</summary>
/// <param name="Statement">Both in a sentence.</param>
/// <param name="Oxidation">In oxidation.</param>
/// <param name="Reduction">In reduction.</param>
public sealed record ColourContrast(Message Statement, ResolvedColour Oxidation, ResolvedColour Reduction);

/// <summary>A question on colour as it was understood.</summary>
/// <param name="Sentence">The question in a sentence.</param>
/// <param name="Colorants">The colorants with their amounts.</param>
/// <param name="Additives">What else is in the glaze.</param>
/// <param name="Base">Id of the base; <c>any</c> where none was named.</param>
/// <param name="Atmospheres">The atmospheres answered for.</param>
/// <param name="Cone">The cone; null where none was named.</param>
/// <param name="Celsius">Its end point on the default chart, °C.</param>
/// <param name="Kiln">The kiln; null where none was named.</param>
/// <param name="ColourWord">The colour word that notes were filtered by.</param>
public sealed record ColourQuestion(
    Message Sentence,
    IReadOnlyList<AskedIngredient> Colorants,
    IReadOnlyList<AskedIngredient> Additives,
    string Base,
    [property: AtmosphereWords(AtmosphereUse.Colour)] IReadOnlyList<Atmosphere> Atmospheres,
    string? Cone,
    decimal? Celsius,
    KilnHeat? Kiln,
    string? ColourWord);

/// <summary>An ingredient of a question.</summary>
/// <param name="Ingredient">Id of a colorant or an additive.</param>
/// <param name="Form">Id of the form in which a colorant is weighed; null where it is its own formula.</param>
/// <param name="Percent">Percentage as sent, added to 100 of glaze.</param>
/// <param name="OxidePercent">The same as the counted oxide.</param>
public sealed record AskedIngredient(string Ingredient, string? Form, decimal? Percent, decimal? OxidePercent);
