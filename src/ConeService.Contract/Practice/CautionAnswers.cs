using ConeService.Contract.Json;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Practice;

/// <summary>The cautions.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="Items">The cautions, by id.</param>
public sealed record CautionList(string DatasetVersion, Message Notice, IReadOnlyList<Caution> Items);

/// <summary>One caution with the limits and the processes that it belongs to.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="Caution">The caution.</param>
/// <param name="ExposureLimits">Limits of what people breathe, each with body and year.</param>
/// <param name="FoodContactLimits">Limits of what ware may give off, each with jurisdiction.</param>
/// <param name="Processes">Ids of the firing processes that name it.</param>
/// <param name="Colorants">Ids of the colorants that name it.</param>
/// <param name="FoodContact">What can be said of food, where the caution is about it.</param>
public sealed record CautionDetail(
    string DatasetVersion,
    Message Notice,
    [property: Flat] Caution Caution,
    IReadOnlyList<ExposureLimit> ExposureLimits,
    IReadOnlyList<FoodContactLimit> FoodContactLimits,
    IReadOnlyList<string> Processes,
    IReadOnlyList<string> Colorants,
    Message? FoodContact);
