using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Contract.Loads;

/// <summary>Two sources that contradict each other, and what this package adopts.</summary>
/// <param name="Id">Id of the disagreement.</param>
/// <param name="Name">What it is about.</param>
/// <param name="Concerns">Rows it concerns, as table/id; none where it concerns no row of this package.</param>
/// <param name="PositionA">What one source says.</param>
/// <param name="SourceA">Id of the source of the first position.</param>
/// <param name="PositionB">What the other says.</param>
/// <param name="SourceB">Id of the source of the second position.</param>
/// <param name="Comment">What is to be thought of it.</param>
/// <param name="Adopted">What this package adopts.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
public sealed record Disagreement(
    string Id,
    string Name,
    IReadOnlyList<string> Concerns,
    string PositionA,
    string SourceA,
    string PositionB,
    string SourceB,
    string? Comment,
    string Adopted,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("disagreements", Id);
}

/// <summary>Where sources contradict each other.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Items">The disagreements.</param>
public sealed record DisagreementList(string DatasetVersion, IReadOnlyList<Disagreement> Items);
