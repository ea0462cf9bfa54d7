namespace ConeService.Data;

/// <summary>A rule of loading and sharing a firing.</summary>
/// <param name="Id">Number of the rule.</param>
/// <param name="Topic">What it is about.</param>
/// <param name="Rule">The rule in a sentence.</param>
/// <param name="Severity">How binding it is.</param>
/// <param name="ValueMin">Lower end of its figure, in <paramref name="Unit"/>.</param>
/// <param name="ValueMax">Upper end of its figure, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the figure.</param>
/// <param name="ConeMin">Lower end where the figure is a span of cones.</param>
/// <param name="ConeMax">Upper end where the figure is a span of cones.</param>
/// <param name="AppliesTo">Where it applies.</param>
/// <param name="ReasonCodes">Reasons of the load check that rest on it; none where the check has no way to see it.</param>
/// <param name="Rationale">Why.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record LoadRuleRow(
    string Id,
    string Topic,
    string Rule,
    RuleSeverity Severity,
    decimal? ValueMin,
    decimal? ValueMax,
    string? Unit,
    string? ConeMin,
    string? ConeMax,
    IReadOnlyList<string> AppliesTo,
    IReadOnlyList<ReasonCode> ReasonCodes,
    string? Rationale,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
