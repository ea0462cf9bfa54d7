namespace ConeService.Data;

/// <summary>A figure that fitting a schedule uses where nobody says otherwise.</summary>
/// <param name="Id">Name of the figure in this package.</param>
/// <param name="Value">The figure.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Statement">What it is for.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ScheduleDefaultRow(string Id, decimal Value, string Unit, string Statement, IReadOnlyList<string> Sources,
    Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
