namespace ConeService.Data;

/// <summary>Two sources that contradict each other, and what this package adopts.</summary>
/// <param name="Id">Number of the disagreement.</param>
/// <param name="Topic">What it is about.</param>
/// <param name="Concerns">Rows it concerns, as table/id; none where it concerns no row of this package.</param>
/// <param name="PositionA">What one source says.</param>
/// <param name="SourceA">Id of the source of the first position.</param>
/// <param name="PositionB">What the other says.</param>
/// <param name="SourceB">Id of the source of the second position.</param>
/// <param name="Comment">What is to be thought of it.</param>
/// <param name="Adopted">What this package adopts.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record DisagreementRow(
    string Id,
    string Topic,
    IReadOnlyList<string> Concerns,
    string PositionA,
    string SourceA,
    string PositionB,
    string SourceB,
    string? Comment,
    string Adopted,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
