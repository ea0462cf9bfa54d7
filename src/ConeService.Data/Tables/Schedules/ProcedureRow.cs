namespace ConeService.Data;

/// <summary>A step of the operating procedure of a firing.</summary>
/// <param name="Id">Name of the step.</param>
/// <param name="Phase">When it is done.</param>
/// <param name="Number">Place among the steps of its phase.</param>
/// <param name="Kinds">Kinds of firing that it belongs to; empty: all.</param>
/// <param name="Heats">Kilns that it belongs to; empty: all.</param>
/// <param name="Schedules">Templates that it belongs to; empty: all.</param>
/// <param name="Reduces">Yes: only where the chamber is reduced; no: only where it is not; null: both.</param>
/// <param name="Statement">The step.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ProcedureRow(string Id, ProcedurePhase Phase, int Number, IReadOnlyList<FiringKind> Kinds,
    IReadOnlyList<KilnHeat> Heats, IReadOnlyList<string> Schedules, YesNo? Reduces, string Statement, IReadOnlyList<string> Sources,
    Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
