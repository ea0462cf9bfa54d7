namespace ConeService.Data;

/// <summary>A number that the kiln model takes where a kiln or a load says nothing.</summary>
/// <param name="Id">Name of the default.</param>
/// <param name="Value">The value, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the value; 1 for a pure number.</param>
/// <param name="Meaning">What the value is.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the value can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record KilnDefaultRow(string Id, decimal Value, string Unit, string Meaning, IReadOnlyList<string> Sources,
    Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
