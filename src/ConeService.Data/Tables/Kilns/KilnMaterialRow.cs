namespace ConeService.Data;

/// <summary>
/// Material of a wall or a load. Conductivity = constant + slope·t + square·t², t in °C; specific heat =
/// constant + slope·T + inverse square/T², T on <paramref name="HeatScale"/>.
/// </summary>
/// <param name="Id">Name of the material.</param>
/// <param name="Use"><c>wall</c>, <c>load</c>, or <c>comparison</c>: not used by the model.</param>
/// <param name="DensityKilogramsPerCubicMetre">Bulk density, kg/m³; walls only.</param>
/// <param name="ConductivityConstant">Conductivity at 0 °C, W/(m K); walls only.</param>
/// <param name="ConductivitySlope">W/(m K²); walls only.</param>
/// <param name="ConductivitySquare">W/(m K³); walls only.</param>
/// <param name="HeatScale"><c>celsius</c> or <c>kelvin</c>.</param>
/// <param name="HeatConstant">J/(kg K).</param>
/// <param name="HeatSlope">J/(kg K²).</param>
/// <param name="HeatInverseSquare">J K/kg; 0 or less.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record KilnMaterialRow(
    string Id,
    string Use,
    decimal? DensityKilogramsPerCubicMetre,
    decimal? ConductivityConstant,
    decimal? ConductivitySlope,
    decimal? ConductivitySquare,
    string HeatScale,
    decimal HeatConstant,
    decimal HeatSlope,
    decimal HeatInverseSquare,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
