namespace ConeService.Data;

/// <summary>A figure that room and times of loading are reckoned with where nobody says otherwise.</summary>
/// <param name="Id">Name of the figure.</param>
/// <param name="Value">The value, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the value; 1 for a pure number.</param>
/// <param name="Statement">What it is for.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the value can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record LoadingDefaultRow(
    string Id, decimal Value, string Unit, string Statement, IReadOnlyList<string> Sources, Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
