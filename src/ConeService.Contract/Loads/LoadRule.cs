using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Contract.Loads;

/// <summary>A rule of loading and sharing a firing.</summary>
/// <param name="Id">Id of the rule.</param>
/// <param name="Topic">What it is about.</param>
/// <param name="Name">The rule in a sentence.</param>
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
public sealed record LoadRule(
    string Id,
    string Topic,
    string Name,
    RuleSeverity Severity,
    [property: RangeOf("valueRange")] decimal? ValueMin,
    decimal? ValueMax,
    string? Unit,
    [property: RangeOf("cones")] string? ConeMin,
    string? ConeMax,
    IReadOnlyList<string> AppliesTo,
    IReadOnlyList<ReasonCode> ReasonCodes,
    string? Rationale,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("load-rules", Id);
}

/// <summary>The load rules.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Items">The rules; those with reason codes are applied by the load check.</param>
public sealed record LoadRuleList(string DatasetVersion, IReadOnlyList<LoadRule> Items);

/// <summary>One load rule.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="LoadRule">The rule.</param>
/// <param name="Disagreements">Where sources contradict each other on it.</param>
public sealed record LoadRuleDetail(string DatasetVersion, [property: Flat] LoadRule LoadRule, IReadOnlyList<Disagreement> Disagreements);
