using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Materials;

/// <summary>A glaze, slip, lustre, enamel or decal with its cone range, atmospheres and order of firing.</summary>
/// <param name="Id">Name of the coat in its package.</param>
/// <param name="Name">What it is called in a sentence.</param>
/// <param name="CoatKind">What sort of coat it is.</param>
/// <param name="ConeMin">Lowest cone.</param>
/// <param name="ConeBest">Best cone; null where the body decides.</param>
/// <param name="ConeMax">Highest cone; null where the body decides.</param>
/// <param name="Atmospheres">Atmospheres in which it gives what it is meant to give.</param>
/// <param name="AtmosphereNote">The atmosphere in words.</param>
/// <param name="WrongAtmosphere">What any other atmosphere leads to.</param>
/// <param name="WrongAtmosphereEffect">What happens in any other atmosphere.</param>
/// <param name="Alternative">Id of a coat that gives something like it where this one cannot be fired.</param>
/// <param name="FiredIn">Kinds of firing it is fired in.</param>
/// <param name="AppliedOn">States of the ware it goes on.</param>
/// <param name="AppliedToNote">What it goes on, in words.</param>
/// <param name="Underfired">What it is like below its range.</param>
/// <param name="Overfired">What it is like above its range.</param>
/// <param name="RunRisk">How readily it runs above its range.</param>
/// <param name="RunNote">The risk in words.</param>
/// <param name="GivesOff">What it gives off that reaches neighbours.</param>
/// <param name="SpoiledBy">Vapours of neighbours that spoil it.</param>
/// <param name="Metallic">Whether it leaves a metal film.</param>
/// <param name="Food">Use with food.</param>
/// <param name="FiringsNote">Firings and their order.</param>
/// <param name="ThirdFireNote">What a third fire does.</param>
/// <param name="HazardsNote">Hazards in words.</param>
/// <param name="Cautions">Ids of the cautions that belong to it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="RangeConfidence">How far the cone ranges can be trusted.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Student">The row in plain sentences for a student, without ids; null where the data package has none.</param>
public sealed record Glaze(
    string Id,
    string Name,
    CoatKind CoatKind,
    [property: RangeOf("cones")] string ConeMin,
    string? ConeBest,
    string? ConeMax,
    [property: AtmosphereWords(AtmosphereUse.Firing)] IReadOnlyList<Atmosphere> Atmospheres,
    string? AtmosphereNote,
    ReasonSeverity WrongAtmosphere,
    string? WrongAtmosphereEffect,
    string? Alternative,
    IReadOnlyList<FiringKind> FiredIn,
    IReadOnlyList<PieceState> AppliedOn,
    string? AppliedToNote,
    string Underfired,
    string? Overfired,
    RunRisk RunRisk,
    string? RunNote,
    IReadOnlyList<Fume> GivesOff,
    IReadOnlyList<Fume> SpoiledBy,
    YesNo Metallic,
    CoatFood Food,
    string? FiringsNote,
    string? ThirdFireNote,
    string? HazardsNote,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence RangeConfidence,
    Confidence Confidence,
    string? Note,
    Message? Student = null)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("glazes", Id);
}
