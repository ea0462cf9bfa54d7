namespace ConeService.Data;

/// <summary>What goes wrong with ware, by the name that potters have for it.</summary>
/// <param name="Id">Id of the fault.</param>
/// <param name="Fault">The fault in a few words.</param>
/// <param name="Synonyms">Other words that people use for it, in lower case.</param>
/// <param name="Tell">How to tell it from other faults, by looking at the ware.</param>
/// <param name="Stages">At which stages of the work it shows; this package's reading.</param>
/// <param name="Unlike">Ids of faults that it is mistaken for.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record FaultRow(
    string Id,
    string Fault,
    IReadOnlyList<string> Synonyms,
    string Tell,
    IReadOnlyList<WorkStage> Stages,
    IReadOnlyList<string> Unlike,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
