namespace ConeService.Data;

/// <summary>What a kind of firing needs of kiln, atmosphere and ware, and what it does to the ware.</summary>
/// <param name="Id">The kind.</param>
/// <param name="Name">What it is called.</param>
/// <param name="KilnHeats">Kilns it is fired in.</param>
/// <param name="Atmospheres">Atmospheres it is fired in.</param>
/// <param name="WrongAtmosphere">What any other atmosphere leads to.</param>
/// <param name="WrongAtmosphereEffect">What happens in any other atmosphere.</param>
/// <param name="ConeMin">Lowest cone it is fired to.</param>
/// <param name="ConeMax">Highest cone it is fired to.</param>
/// <param name="Takes">States of the ware it takes.</param>
/// <param name="FirstFire">Whether raw clay may go into it.</param>
/// <param name="Food">What ware that comes out of it is for.</param>
/// <param name="TakesIn">What is put in, in words.</param>
/// <param name="DoesToOthers">What it does to everything in the kiln, in words.</param>
/// <param name="Cautions">Ids of the cautions that belong to it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record FiringKindRow(
    FiringKind Id,
    string Name,
    IReadOnlyList<KilnHeat> KilnHeats,
    IReadOnlyList<Atmosphere> Atmospheres,
    ReasonSeverity WrongAtmosphere,
    string? WrongAtmosphereEffect,
    string ConeMin,
    string ConeMax,
    IReadOnlyList<PieceState> Takes,
    YesNo FirstFire,
    WareFood Food,
    string TakesIn,
    string DoesToOthers,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
