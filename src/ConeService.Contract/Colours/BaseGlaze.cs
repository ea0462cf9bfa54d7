using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>A base in which colours are told.</summary>
/// <param name="Id">Id of the base.</param>
/// <param name="Name">What it is.</param>
/// <param name="Description">How to know it.</param>
/// <param name="Contains">Ingredients that it brings, in amounts that are not stated: ids of additives or colorants.</param>
/// <param name="ConeMin">Lowest cone it is fired to; null where nothing forbids.</param>
/// <param name="ConeMax">Highest cone it is fired to; null where nothing forbids.</param>
/// <param name="Aliases">Other names a caller may use.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record BaseGlaze(
    string Id,
    string Name,
    string Description,
    IReadOnlyList<string> Contains,
    [property: RangeOf("cones")] string? ConeMin,
    string? ConeMax,
    IReadOnlyList<string> Aliases,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("base-glazes", Id);
}
