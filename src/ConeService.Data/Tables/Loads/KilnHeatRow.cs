namespace ConeService.Data;

/// <summary>What heats a kiln, and what follows from it.</summary>
/// <param name="Id">The heat.</param>
/// <param name="Name">What such a kiln is called.</param>
/// <param name="Reduction">What reduction does in it.</param>
/// <param name="ClearanceMillimetres">Least room between ware and elements, wall or roof, mm.</param>
/// <param name="Cautions">Ids of the cautions that belong to it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record KilnHeatRow(
    KilnHeat Id,
    string Name,
    KilnReduction Reduction,
    decimal ClearanceMillimetres,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
