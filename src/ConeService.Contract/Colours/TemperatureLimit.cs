using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>To which heat a colour holds, or where a colorant begins to gas or fume.</summary>
/// <param name="Id">Id of the limit.</param>
/// <param name="Colorant">The colorant.</param>
/// <param name="TemperatureLimitKind">usable-range (outside it the colour is not to be had), fumes-above, gives-off-oxygen-above.</param>
/// <param name="ConeMin">From this cone, or above this cone for what happens above.</param>
/// <param name="ConeMax">To this cone.</param>
/// <param name="CelsiusMin">Range of temperatures; for what happens above, its lower end alone.</param>
/// <param name="CelsiusMax">To this temperature, °C.</param>
/// <param name="Effect">What happens, in a sentence.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record TemperatureLimit(
    string Id,
    string Colorant,
    TemperatureLimitKind TemperatureLimitKind,
    [property: RangeOf("cones")] string? ConeMin,
    string? ConeMax,
    [property: RangeOf("temperatureCelsius")] decimal? CelsiusMin,
    decimal? CelsiusMax,
    string Effect,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("temperature-limits", Id);
}
