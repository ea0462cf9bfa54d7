namespace ConeService.Data;

/// <summary>One word of the closed list of colours.</summary>
/// <param name="Id">The word.</param>
/// <param name="Kind">hue, tone or surface.</param>
/// <param name="Covers">Names that were put under it; blank where only itself.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ColourWordRow(
    string Id,
    ColourWordKind Kind,
    string? Covers,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
