using ConeService.Contract.Json;
using ConeService.Contract.Practice;

namespace ConeService.Contract.Study;

/// <summary>The faults of ware.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Items">The faults, by id.</param>
public sealed record FaultList(string DatasetVersion, IReadOnlyList<Fault> Items);

/// <summary>One fault of ware.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Fault">The fault.</param>
/// <param name="Unlike">Faults that it is mistaken for.</param>
/// <param name="Cautions">The cautions that go with it.</param>
/// <param name="Landmarks">Landmarks of the firing that its causes name.</param>
public sealed record FaultDetail(
    string DatasetVersion,
    [property: Flat] Fault Fault,
    IReadOnlyList<NamedLink> Unlike,
    IReadOnlyList<CautionLink> Cautions,
    IReadOnlyList<NamedLink> Landmarks);
