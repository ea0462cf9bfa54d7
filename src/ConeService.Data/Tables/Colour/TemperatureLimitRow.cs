namespace ConeService.Data;

/// <summary>To which heat a colour holds, or where a colorant begins to gas or fume.</summary>
/// <param name="Id">Name of the limit in this package.</param>
/// <param name="Colorant">The colorant.</param>
/// <param name="Kind">usable-range (outside it the colour is not to be had), fumes-above, gives-off-oxygen-above.</param>
/// <param name="ConeLow">From this cone, or above this cone for what happens above.</param>
/// <param name="ConeHigh">To this cone.</param>
/// <param name="CelsiusLow">From this temperature, or above it for what happens above, °C.</param>
/// <param name="CelsiusHigh">To this temperature, °C.</param>
/// <param name="Effect">What happens, in a sentence.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record TemperatureLimitRow(
    string Id,
    string Colorant,
    TemperatureLimitKind Kind,
    string? ConeLow,
    string? ConeHigh,
    decimal? CelsiusLow,
    decimal? CelsiusHigh,
    string Effect,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
