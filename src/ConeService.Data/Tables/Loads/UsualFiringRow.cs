namespace ConeService.Data;

/// <summary>A firing that studios usually run.</summary>
/// <param name="FiringKind">Kind of the firing.</param>
/// <param name="Cone">The cone it is fired to.</param>
/// <param name="Atmospheres">The atmospheres in which it is usual.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record UsualFiringRow(
    FiringKind FiringKind, string Cone, IReadOnlyList<Atmosphere> Atmospheres, IReadOnlyList<string> Sources, Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
