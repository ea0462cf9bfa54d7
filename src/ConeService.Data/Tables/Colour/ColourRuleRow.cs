namespace ConeService.Data;

/// <summary>What several ingredients, heat and atmosphere do together.</summary>
/// <param name="Id">Number of the rule, kept from the reference tables (33 and above were added); never reused.</param>
/// <param name="Rule">The rule in a few words.</param>
/// <param name="Effect">replaces-colour, shifts-colour, loses-colour, gives-off-gas, stains-neighbours, more-fluid, warning, or
/// statement (told, never decides).</param>
/// <param name="Outcome">What happens, in a sentence.</param>
/// <param name="ColourWords">Colours of the outcome.</param>
/// <param name="Reason">Why, as the trade explains it; outside what the confidence covers.</param>
/// <param name="Figures">Amounts and temperatures in words.</param>
/// <param name="Atmospheres">Atmospheres in which it holds; blank where in all.</param>
/// <param name="Bases">Bases in which it holds; blank where in all.</param>
/// <param name="Limit">Temperature limit beyond which it holds; blank where it holds at any heat.</param>
/// <param name="ShownBy">Colour notes that show the outcome.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ColourRuleRow(
    string Id,
    string Rule,
    ColourRuleEffect Effect,
    string Outcome,
    IReadOnlyList<string> ColourWords,
    string? Reason,
    string? Figures,
    IReadOnlyList<Atmosphere> Atmospheres,
    IReadOnlyList<string> Bases,
    string? Limit,
    IReadOnlyList<string> ShownBy,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
