using ConeService.Contract.Json;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Practice;

/// <summary>The limits of exposure and of food contact.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="FoodContact">Only a leach test tells.</param>
/// <param name="Items">What people breathe at work, each with body and year, then what ware may give off, each with jurisdiction.</param>
public sealed record LimitList(string DatasetVersion, Message Notice, Message FoodContact, IReadOnlyList<Limit> Items);

/// <summary>One limit, of exposure or of food contact.</summary>
/// <param name="Id">Id of the limit.</param>
/// <param name="Name">What is limited, and who limits it.</param>
/// <param name="LimitKind">Which of the two it is.</param>
/// <param name="Exposure">The limit of exposure; null for a food-contact limit.</param>
/// <param name="FoodContactLimit">The food-contact limit; null for a limit of exposure.</param>
public sealed record Limit(string Id, string Name, LimitKind LimitKind, ExposureLimit? Exposure, FoodContactLimit? FoodContactLimit)
{
    /// <summary>A limit of exposure.</summary>
    public static Limit Of(ExposureLimit limit) => new(limit.Id, $"{limit.Substance}, {limit.Body}", LimitKind.Exposure, limit, null);

    /// <summary>A food-contact limit.</summary>
    public static Limit Of(FoodContactLimit limit) =>
        new(limit.Id, $"{limit.Ware}, {limit.Instrument}", LimitKind.FoodContact, null, limit);
}

/// <summary>What is limited.</summary>
public enum LimitKind
{
    /// <summary>What people breathe at work.</summary>
    Exposure,

    /// <summary>What ware gives off to food.</summary>
    FoodContact,
}

/// <summary>One limit with what belongs to it.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="Limit">The limit.</param>
/// <param name="FoodContact">Only a leach test tells; null for a limit of exposure.</param>
/// <param name="Cautions">The cautions it belongs to.</param>
public sealed record LimitDetail(
    string DatasetVersion, Message Notice, [property: Flat] Limit Limit, Message? FoodContact, IReadOnlyList<CautionLink> Cautions);
