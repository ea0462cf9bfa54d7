namespace ConeService.Data;

/// <summary>Why a fault happens: one cause, what gives it away, and what to change.</summary>
/// <param name="Id">Id of the cause.</param>
/// <param name="Fault">Id of the fault.</param>
/// <param name="Cause">Why it happens.</param>
/// <param name="Tell">What gives this cause away among the causes of the fault.</param>
/// <param name="Change">What to change.</param>
/// <param name="Landmarks">Landmarks of the firing at which it happens or is prevented.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record FaultCauseRow(
    string Id,
    string Fault,
    string Cause,
    string Tell,
    string Change,
    IReadOnlyList<string> Landmarks,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
