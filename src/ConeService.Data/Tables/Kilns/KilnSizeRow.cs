namespace ConeService.Data;

/// <summary>Wall and power that a kiln of a size usually has.</summary>
/// <param name="Heat"><c>electric</c> or <c>gas</c>.</param>
/// <param name="FromLitres">Inner volume from which the row holds, up to the next of the same heat, L.</param>
/// <param name="WallMaterial">Id of the usual wall.</param>
/// <param name="WallMillimetres">Its usual thickness, mm.</param>
/// <param name="KilowattsPerSquareMetre">Usual power per area of the inside, kW/m².</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record KilnSizeRow(string Heat, decimal FromLitres, string WallMaterial, decimal WallMillimetres,
    decimal KilowattsPerSquareMetre, IReadOnlyList<string> Sources, Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
