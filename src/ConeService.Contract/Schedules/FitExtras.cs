using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Schedules;

/// <summary>Something that the ware passes on the way.</summary>
/// <param name="Id">Its row in the data package.</param>
/// <param name="Name">What it is.</param>
/// <param name="Cooling">True on the way down.</param>
/// <param name="FromMinutes">When the ware enters it, minutes from the start.</param>
/// <param name="ToMinutes">When it has passed; null when the firing ends inside it.</param>
/// <param name="CelsiusMin">Range of temperatures of the ware.</param>
/// <param name="CelsiusMax">Upper end, °C.</param>
/// <param name="Advice">What to do.</param>
/// <param name="Confidence">How far it can be trusted.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record FitLandmark(
    string Id,
    string Name,
    bool Cooling,
    double FromMinutes,
    double? ToMinutes,
    [property: RangeOf("temperatureCelsius")] decimal CelsiusMin,
    decimal CelsiusMax,
    string? Advice,
    Confidence Confidence,
    IReadOnlyList<string> Sources);

/// <summary>The cones to set beside the ware; whole cones only.</summary>
/// <param name="Guide">The next cooler one that is down by then: it goes down first and says that it is time to watch.</param>
/// <param name="Target">The target.</param>
/// <param name="Guard">The next hotter one that ends at least 12 °C short of down: it must stay up.</param>
/// <param name="Message">How to read them.</param>
public sealed record WitnessCones(string? Guide, string Target, string? Guard, Message Message);

/// <summary>A hazard of this firing.</summary>
/// <param name="Id">Its row in the data package.</param>
/// <param name="Name">The hazard.</param>
/// <param name="Severity">How bad it can get without control.</param>
/// <param name="When">When and where it arises.</param>
/// <param name="Control">What controls it.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record FitCaution(string Id, string Name, Severity Severity, string When, string Control, IReadOnlyList<string> Sources);
