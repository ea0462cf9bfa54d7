namespace ConeService.Data;

/// <summary>A term of the trade in everyday English.</summary>
/// <param name="Id">Id of the term.</param>
/// <param name="Term">The term.</param>
/// <param name="Synonyms">Other words for it.</param>
/// <param name="Meaning">What it means.</param>
/// <param name="See">Ids of terms to read next.</param>
/// <param name="Href">Path of this service at which more is told; null where there is none.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record TermRow(
    string Id,
    string Term,
    IReadOnlyList<string> Synonyms,
    string Meaning,
    IReadOnlyList<string> See,
    string? Href,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
