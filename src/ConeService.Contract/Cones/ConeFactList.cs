using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Cones;

/// <summary>What is known of how cones behave.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Topic">The topic asked for; null for all.</param>
/// <param name="Topics">Every topic there is.</param>
/// <param name="Items">The facts, one statement each, with source and confidence.</param>
public sealed record ConeFactList(string DatasetVersion, string? Topic, IReadOnlyList<string> Topics, IReadOnlyList<ConeFact> Items);

/// <summary>One statement on how cones behave.</summary>
/// <param name="Id">Id of the fact.</param>
/// <param name="Topic">What the fact is about.</param>
/// <param name="Name">The fact in a sentence.</param>
/// <param name="ValuePrinted">The value as the source gives it.</param>
/// <param name="ValueMin">Lower end of the value where it is one number or one span, in <paramref name="Unit"/>.</param>
/// <param name="ValueMax">Upper end of the value where it is one number or one span, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the value.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the fact can be trusted.</param>
/// <param name="Note">What a reader must know about the fact.</param>
/// <param name="Student">The row in plain sentences for a student, without ids; null where the data package has none.</param>
public sealed record ConeFact(
    string Id, string Topic, string Name, string? ValuePrinted, [property: RangeOf("valueRange")] decimal? ValueMin,
    decimal? ValueMax, string? Unit,
    IReadOnlyList<string> Sources, Confidence Confidence, string? Note,
    Message? Student = null)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("cone-facts", Id);
}
