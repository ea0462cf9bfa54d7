namespace ConeService.Data;

/// <summary>One cone number that some chart prints.</summary>
/// <param name="Id">The cone as text.</param>
/// <param name="Position">Signed number for sorting: 022 is −22, 01 is −1, 1 is 1; halves at .5.</param>
/// <param name="Kind">whole, half or seger-letter.</param>
/// <param name="WholeStep">Index among the 36 whole cones 022 … 14 (022 is 0); null outside.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ConeRow(string Id, decimal Position, string Kind, int? WholeStep, IReadOnlyList<string> Sources,
    Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
