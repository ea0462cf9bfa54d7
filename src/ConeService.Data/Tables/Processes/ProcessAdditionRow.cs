namespace ConeService.Data;

/// <summary>A material that a process needs beside clay and glaze, and when it goes in.</summary>
/// <param name="Process">The process.</param>
/// <param name="Material">The material.</param>
/// <param name="When">When it goes in, in words.</param>
/// <param name="CelsiusLow">Kiln temperature from which it is added, °C.</param>
/// <param name="CelsiusHigh">Kiln temperature to which it is added, °C.</param>
/// <param name="ConeLow">Cone from which it is added.</param>
/// <param name="ConeHigh">Cone to which it is added.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ProcessAdditionRow(
    string Process,
    string Material,
    string When,
    decimal? CelsiusLow,
    decimal? CelsiusHigh,
    string? ConeLow,
    string? ConeHigh,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
