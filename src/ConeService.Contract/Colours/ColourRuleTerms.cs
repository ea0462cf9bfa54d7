using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>What several ingredients, heat and atmosphere do together.</summary>
/// <param name="Id">Id of the rule.</param>
/// <param name="Rule">The rule in a few words.</param>
/// <param name="Effect">replaces-colour, shifts-colour, loses-colour, gives-off-gas, stains-neighbours, more-fluid, warning, or
/// statement (told, never decides).</param>
/// <param name="Outcome">What happens, in a sentence.</param>
/// <param name="ColourWords">Colours of the outcome.</param>
/// <param name="Reason">Why, as the trade explains it; outside what the confidence covers.</param>
/// <param name="Figures">Amounts and temperatures in words.</param>
/// <param name="Atmospheres">Atmospheres in which it holds; empty where in all.</param>
/// <param name="Bases">Bases in which it holds; empty where in all.</param>
/// <param name="Limit">Temperature limit beyond which it holds; null where it holds at any heat.</param>
/// <param name="ShownBy">Colour notes that show the outcome.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record ColourRuleTerms(
    string Id,
    string Rule,
    ColourRuleEffect Effect,
    string Outcome,
    IReadOnlyList<string> ColourWords,
    string? Reason,
    string? Figures,
    [property: AtmosphereWords(AtmosphereUse.Colour)] IReadOnlyList<Atmosphere> Atmospheres,
    IReadOnlyList<string> Bases,
    string? Limit,
    IReadOnlyList<string> ShownBy,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("colour-rules", Id);
}
