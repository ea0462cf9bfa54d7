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
    IReadOnlyList<NamedLink> Landmarks)
{
    /// <summary>What gives off the gas behind it, by id; none where no gas is.</summary>
    public IReadOnlyList<GasRelease> GasReleases { get; init; } = [];

    /// <summary>Oxides of which too much in a glaze brings it, from what lowers expansion most to what raises it most; none where the fit
    /// of glaze and clay has no part in it.</summary>
    public IReadOnlyList<OxideExpansion> Oxides { get; init; } = [];
}
