namespace ConeService.Data;

/// <summary>The upper temperature that is suggested for a thermocouple by the size of its wire, inside a protecting tube.</summary>
/// <param name="Id">Name of the row.</param>
/// <param name="Type">Letter of the thermocouple.</param>
/// <param name="WireGauge">Size of the wire, American wire gauge: the greater, the thinner.</param>
/// <param name="WireMillimetres">Diameter of the wire, mm.</param>
/// <param name="Celsius">Upper temperature, °C.</param>
/// <param name="Fahrenheit">The same as printed, °F.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ThermocoupleLimitRow(
    string Id,
    string Type,
    int WireGauge,
    decimal WireMillimetres,
    decimal Celsius,
    decimal Fahrenheit,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
