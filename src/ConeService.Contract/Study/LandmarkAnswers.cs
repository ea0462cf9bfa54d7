using ConeService.Contract.Json;
using ConeService.Contract.Practice;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Study;

/// <summary>The landmarks of a firing.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="Items">The landmarks, by id.</param>
public sealed record LandmarkList(string DatasetVersion, Message Notice, IReadOnlyList<Landmark> Items);

/// <summary>One landmark of a firing.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="Landmark">The landmark.</param>
/// <param name="Cautions">The cautions that go with it.</param>
/// <param name="Faults">Faults of ware that a cause ties to it.</param>
public sealed record LandmarkDetail(
    string DatasetVersion,
    Message Notice,
    [property: Flat] Landmark Landmark,
    IReadOnlyList<CautionLink> Cautions,
    IReadOnlyList<NamedLink> Faults);
