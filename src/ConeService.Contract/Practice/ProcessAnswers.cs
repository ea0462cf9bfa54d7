using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Practice;

/// <summary>The firing processes.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="FoodContact">Only a leach test tells.</param>
/// <param name="Items">The processes, by id; each names its cautions.</param>
public sealed record ProcessList(
    string DatasetVersion, Message Notice, Message FoodContact, IReadOnlyList<FiringProcess> Items);

/// <summary>One firing process.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="Process">The process.</param>
/// <param name="FoodContact">What can be said of food in its ware, with the limits by jurisdiction.</param>
/// <param name="AddedMaterials">What is added beside clay and glaze, and when.</param>
/// <param name="Cautions">The cautions, the gravest first.</param>
/// <param name="ExposureLimits">Limits of what people breathe that go with the cautions.</param>
/// <param name="Sources">Ids of the sources of everything above.</param>
public sealed record ProcessDetail(
    string DatasetVersion,
    Message Notice,
    [property: Flat] FiringProcess Process,
    FoodContactAnswer FoodContact,
    IReadOnlyList<AddedMaterial> AddedMaterials,
    IReadOnlyList<CautionLink> Cautions,
    IReadOnlyList<ExposureLimit> ExposureLimits,
    IReadOnlyList<string> Sources);

/// <summary>What can be said of food in ware of a process.</summary>
/// <param name="Verdict">Of the process.</param>
/// <param name="Statement">Only a leach test tells.</param>
/// <param name="Note">On what it depends.</param>
/// <param name="Limits">Limits in use today, each with jurisdiction; empty where food is no question.</param>
public sealed record FoodContactAnswer(
    ProcessFoodContact Verdict, Message Statement, string? Note, IReadOnlyList<FoodContactLimit> Limits);

/// <summary>A material that goes into a firing beside clay and glaze.</summary>
/// <param name="Material">The material.</param>
/// <param name="When">When it goes in.</param>
/// <param name="CelsiusMin">Range of kiln temperatures in which it is added.</param>
/// <param name="CelsiusMax">Kiln temperature to which it is added, °C.</param>
/// <param name="ConeMin">Cone from which it is added.</param>
/// <param name="ConeMax">Cone to which it is added.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
public sealed record AddedMaterial(
    string Material,
    string When,
    [property: RangeOf("temperatureCelsius")] decimal? CelsiusMin,
    decimal? CelsiusMax,
    [property: RangeOf("cones")] string? ConeMin,
    string? ConeMax,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note);
