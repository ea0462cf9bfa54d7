namespace ConeService.Data;

/// <summary>Air and gas burners at an elevation. Local codes, the maker of a burner and a licensed fitter decide.</summary>
/// <param name="Id">Name of the row.</param>
/// <param name="ElevationFeet">Elevation above the sea, ft.</param>
/// <param name="ElevationMetres">The same, m, rounded.</param>
/// <param name="PressureHectopascals">Pressure of the standard atmosphere, hPa.</param>
/// <param name="OxygenHectopascals">Partial pressure of oxygen in dry air of that pressure, hPa.</param>
/// <param name="BoilingCelsius">Boiling point of water, °C.</param>
/// <param name="GasInputLessPercent">How much the input of a gas appliance is lowered against its rating, %.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record AltitudeRow(
    string Id,
    decimal ElevationFeet,
    decimal ElevationMetres,
    decimal PressureHectopascals,
    decimal OxygenHectopascals,
    decimal BoilingCelsius,
    decimal GasInputLessPercent,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
