namespace ConeService.Data;

/// <summary>Activation energy of bending fitted to a cone's printed end points; a slope, not a mechanism.</summary>
/// <param name="Chart">Id of the chart that was fitted.</param>
/// <param name="Cone">The cone.</param>
/// <param name="ActivationEnergyKilojoulesPerMole">Activation energy, kJ/mol.</param>
/// <param name="Oddity">Why an answer that the cone decides needs a warning; null where it needs none.</param>
/// <param name="Source">Id of the source, always <c>derived</c>.</param>
/// <param name="Confidence">How far the value can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record BendingEnergyRow(
    string Chart,
    string Cone,
    decimal ActivationEnergyKilojoulesPerMole,
    ConeOddity? Oddity,
    string Source,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
