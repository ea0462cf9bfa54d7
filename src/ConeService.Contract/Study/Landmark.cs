using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Contract.Study;

/// <summary>What happens in ware, glaze and kiln at a temperature, and what to do about it.</summary>
/// <param name="Id">Id of the landmark.</param>
/// <param name="Name">What happens.</param>
/// <param name="Phase">heating, cooling, either (both ways) or look (how the kiln looks).</param>
/// <param name="CelsiusMin">Band of temperature in which it happens.</param>
/// <param name="CelsiusMax">Upper end of the band, °C.</param>
/// <param name="RateMin">Greatest heating or cooling rate advised, °C/h, from the most careful advice to the least.</param>
/// <param name="RateMax">Greatest rate advised: the least careful advice, °C/h.</param>
/// <param name="SlowFromCelsius">From here go slowly, in the direction of the phase; null where nothing is advised.</param>
/// <param name="SlowToCelsius">To here; null where nothing is advised.</param>
/// <param name="HoldMin">Temperatures at which a hold is advised.</param>
/// <param name="HoldMax">Hold advised to this temperature, °C.</param>
/// <param name="MinutesMin">Length of the hold advised, minutes.</param>
/// <param name="MinutesMax">Longest hold advised, minutes.</param>
/// <param name="Advice">What to do, in words.</param>
/// <param name="Effect">What it does to the ware, or what goes wrong.</param>
/// <param name="Cautions">Ids of the cautions that go with it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record Landmark(
    string Id,
    string Name,
    LandmarkPhase Phase,
    [property: RangeOf("temperatureCelsius")] decimal CelsiusMin,
    decimal CelsiusMax,
    [property: RangeOf("greatestRateCelsiusPerHour")] decimal? RateMin,
    decimal? RateMax,
    decimal? SlowFromCelsius,
    decimal? SlowToCelsius,
    [property: RangeOf("holdAtCelsius")] decimal? HoldMin,
    decimal? HoldMax,
    [property: RangeOf("holdMinutes")] decimal? MinutesMin,
    decimal? MinutesMax,
    string? Advice,
    string? Effect,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("landmarks", Id);
}
