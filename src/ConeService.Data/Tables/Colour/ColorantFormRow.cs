namespace ConeService.Data;

/// <summary>A substance in which a colorant is weighed.</summary>
/// <param name="Id">Name of the form in this package.</param>
/// <param name="Colorant">The colorant.</param>
/// <param name="Name">Its name.</param>
/// <param name="Formula">Its formula.</param>
/// <param name="OxideFactor">Parts of the counted oxide with the same metal, for one part of the form.</param>
/// <param name="Arithmetic">How the factor follows from the atomic weights.</param>
/// <param name="Aliases">Other names a caller may use.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ColorantFormRow(
    string Id,
    string Colorant,
    string Name,
    string Formula,
    decimal OxideFactor,
    string Arithmetic,
    IReadOnlyList<string> Aliases,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
