namespace ConeService.Data;

/// <summary>A base in which colours are told.</summary>
/// <param name="Id">Name of the base.</param>
/// <param name="Name">What it is.</param>
/// <param name="Description">How to know it.</param>
/// <param name="Contains">Ingredients that it brings, in amounts that are not stated: ids of additives or colorants.</param>
/// <param name="ConeMin">Lowest cone it is fired to; blank where nothing forbids.</param>
/// <param name="ConeMax">Highest cone it is fired to; blank where nothing forbids.</param>
/// <param name="Aliases">Other names a caller may use.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record BaseGlazeRow(
    string Id,
    string Name,
    string Description,
    IReadOnlyList<string> Contains,
    string? ConeMin,
    string? ConeMax,
    IReadOnlyList<string> Aliases,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
