namespace ConeService.Data;

/// <summary>A class of ware by its water absorption, as a standard draws it.</summary>
/// <param name="Id">Name of the class.</param>
/// <param name="Standard">The standard that draws the class.</param>
/// <param name="Class">Name of the class in the standard.</param>
/// <param name="Ware">What the standard classes: extruded or dry-pressed tile, or whiteware.</param>
/// <param name="PercentAbove">Water absorption above which the class begins, %; null where it begins at 0.</param>
/// <param name="PercentTo">Water absorption up to which it goes, %; null where it is open.</param>
/// <param name="Method">The standard that says how absorption is measured.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record AbsorptionClassRow(
    string Id,
    string Standard,
    string Class,
    string Ware,
    decimal? PercentAbove,
    decimal? PercentTo,
    string Method,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
