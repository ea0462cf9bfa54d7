using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Contract.Study;

/// <summary>A term of the trade in everyday English.</summary>
/// <param name="Id">Id of the term.</param>
/// <param name="Name">The term.</param>
/// <param name="Synonyms">Other words for it.</param>
/// <param name="Meaning">What it means.</param>
/// <param name="See">Ids of terms to read next.</param>
/// <param name="Href">Address at which more is told; null where there is none.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record Term(
    string Id,
    string Name,
    IReadOnlyList<string> Synonyms,
    string Meaning,
    IReadOnlyList<string> See,
    Address? Href,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("terms", Id);
}

/// <summary>The terms of the trade.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Items">The terms, by id.</param>
public sealed record TermList(string DatasetVersion, IReadOnlyList<Term> Items);

/// <summary>One term of the trade.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Term">The term.</param>
/// <param name="See">Terms to read next.</param>
public sealed record TermDetail(string DatasetVersion, [property: Flat] Term Term, IReadOnlyList<NamedLink> See);
