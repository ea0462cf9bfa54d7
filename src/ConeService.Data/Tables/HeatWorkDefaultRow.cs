namespace ConeService.Data;

/// <summary>What a heat-work answer takes for a parameter that was left out.</summary>
/// <param name="Id">Name of the parameter.</param>
/// <param name="Value">The value.</param>
/// <param name="Unit">Its unit; 1 for a number without one.</param>
/// <param name="Meaning">What it is.</param>
/// <param name="Source">Id of the source.</param>
/// <param name="Confidence">How far the value can be trusted.</param>
/// <param name="Note">What a reader must know about the value.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record HeatWorkDefaultRow(string Id, decimal Value, string Unit, string Meaning, string Source, Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
