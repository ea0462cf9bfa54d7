using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Contract.Loads;

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
public sealed record FiringKindDescription(
    FiringKind Id,
    string Name,
    IReadOnlyList<KilnHeat> KilnHeats,
    [property: AtmosphereWords(AtmosphereUse.Firing)] IReadOnlyList<Atmosphere> Atmospheres,
    ReasonSeverity WrongAtmosphere,
    string? WrongAtmosphereEffect,
    [property: RangeOf("cones")] string ConeMin,
    string ConeMax,
    IReadOnlyList<PieceState> Takes,
    YesNo FirstFire,
    WareFood Food,
    string TakesIn,
    string DoesToOthers,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("firing-kinds", EnumWords.Word(Id));
}

/// <summary>What heats a kiln, and what follows from it.</summary>
/// <param name="Id">The heat.</param>
/// <param name="Name">What such a kiln is called.</param>
/// <param name="Reduction">What reduction does in it.</param>
/// <param name="ClearanceMillimetres">Least room between ware and elements, wall or roof, mm.</param>
/// <param name="Cautions">Ids of the cautions that belong to it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
public sealed record KilnHeatDescription(
    KilnHeat Id,
    string Name,
    KilnReduction Reduction,
    decimal ClearanceMillimetres,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("kiln-heats", EnumWords.Word(Id));
}

/// <summary>The kinds of firing, and the kilns.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Items">What each kind of firing needs and does.</param>
/// <param name="KilnHeats">What follows from what heats a kiln.</param>
/// <param name="Disagreements">Where sources contradict each other on them.</param>
public sealed record FiringKindList(
    string DatasetVersion,
    IReadOnlyList<FiringKindDescription> Items,
    IReadOnlyList<KilnHeatDescription> KilnHeats,
    IReadOnlyList<Disagreement> Disagreements);
