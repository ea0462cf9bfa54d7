using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Contract.Study;

/// <summary>What gives off gas while ware is heated, and at which temperature.</summary>
/// <param name="Id">Id of the release.</param>
/// <param name="Name">What gives off the gas.</param>
/// <param name="Reaction">The reaction, or what happens in words.</param>
/// <param name="Gases">The gases.</param>
/// <param name="CelsiusMin">Temperatures at which it happens; the upper end is null where it is not known.</param>
/// <param name="CelsiusMax">Temperature at which it is over, °C.</param>
/// <param name="Atmosphere">The atmosphere in which the temperatures hold.</param>
/// <param name="RateCelsiusPerHour">Heating rate at which it was measured, °C/h; null where that is not known. A kiln is slower, and there
/// it begins and ends at lower temperatures.</param>
/// <param name="Landmark">Id of the landmark of the firing that tells of the same; null where none does.</param>
/// <param name="Cautions">Ids of the cautions on the gas or the dust.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record GasRelease(
    string Id,
    string Name,
    string Reaction,
    IReadOnlyList<string> Gases,
    [property: RangeOf("temperatureCelsius")] decimal? CelsiusMin,
    decimal? CelsiusMax,
    [property: AtmosphereWords(AtmosphereUse.Reaction)] Atmosphere Atmosphere,
    decimal? RateCelsiusPerHour,
    string? Landmark,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("gas-releases", Id);
}
