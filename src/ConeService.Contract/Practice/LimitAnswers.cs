using ConeService.Contract.Texts;

namespace ConeService.Contract.Practice;

/// <summary>The limits of exposure and of food contact.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="FoodContact">Only a leach test tells.</param>
/// <param name="ExposureLimits">What people breathe at work, each with body and year.</param>
/// <param name="FoodContactLimits">What ware may give off, each with jurisdiction.</param>
public sealed record LimitList(
    string DatasetVersion,
    Message Notice,
    Message FoodContact,
    IReadOnlyList<ExposureLimit> ExposureLimits,
    IReadOnlyList<FoodContactLimit> FoodContactLimits);

/// <summary>One limit, of exposure or of food contact.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="ExposureLimit">The limit of exposure; null for a food-contact limit.</param>
/// <param name="FoodContactLimit">The food-contact limit; null for a limit of exposure.</param>
/// <param name="FoodContact">Only a leach test tells; null for a limit of exposure.</param>
/// <param name="Cautions">The cautions it belongs to.</param>
public sealed record LimitDetail(
    string DatasetVersion,
    Message Notice,
    ExposureLimit? ExposureLimit,
    FoodContactLimit? FoodContactLimit,
    Message? FoodContact,
    IReadOnlyList<CautionLink> Cautions);
